import type { Batch } from "../records/index.js";
import { judgeAim } from "./aim-judge.js";
import { listed } from "./season-words.js";
import type { AimAttribute, AimReport, AimResult, TastingReport } from "./types.js";

type Aim = NonNullable<Batch["aim"]>;

/**
 * Whether the batch did what it was meant to, by the aim set beforehand: met, not met, or can't tell.
 * The primary attribute decides where one was named; else all of them together.
 *
 * @param tastings of this batch, in the order of the record; the first that scored an attribute judges it
 */
export function aimReport({ aim }: Batch, tastings: readonly TastingReport[]): AimReport | undefined {
  if (aim === undefined) return undefined;
  const { words, primary, margin, raise = [], lower = [], hold = [] } = aim;
  return {
    ...(words === undefined ? {} : { words }),
    raise, lower, hold,
    ...(primary === undefined ? {} : { primary }),
    ...(margin === undefined ? {} : { margin }),
    ...verdictOf(aim, tastings.filter(({ planned }) => planned !== true)),
  };
}

function verdictOf(aim: Aim, tastings: readonly TastingReport[]): Pick<AimReport, "verdict" | "result" | "attributes"> {
  const wants = wantsOf(aim);
  if (tastings.length === 0) return { verdict: "Can't tell yet: no tasting is recorded." };
  if (wants.length === 0) return { verdict: "Can't tell: the aim names no attribute to raise, lower or hold." };
  const attributes = wants.map(({ attribute, want }) => judgeAim(attribute, want, attribute === aim.primary, aim.margin, tastings));
  const decisive = attributes.find((attribute) => attribute.primary);
  const result = decisive?.result ?? together(attributes);
  const reservation = tastings.find((tasting) => judges(tasting, attributes))?.reservation;
  return { verdict: sentence(result, attributes, decisive, reservation), result, attributes };
}

/** Whether a tasting asked about any of the attributes. */
function judges({ attributes, pairs = [] }: TastingReport, wanted: readonly AimAttribute[]): boolean {
  const asked = new Set([...attributes, ...pairs].map(({ attribute }) => attribute));
  return wanted.some(({ attribute }) => asked.has(attribute));
}

function wantsOf({ raise = [], lower = [], hold = [], primary }: Aim): { readonly attribute: string; readonly want: AimAttribute["want"] }[] {
  const wants = [
    ...raise.map((attribute) => ({ attribute, want: "raise" as const })),
    ...lower.map((attribute) => ({ attribute, want: "lower" as const })),
    ...hold.map((attribute) => ({ attribute, want: "hold" as const })),
  ];
  return [...wants.filter(({ attribute }) => attribute === primary), ...wants.filter(({ attribute }) => attribute !== primary)];
}

function together(attributes: readonly AimAttribute[]): AimResult {
  if (attributes.some(({ result }) => result === "not met")) return "not met";
  return attributes.every(({ result }) => result === "met") ? "met" : "can't tell";
}

const HEADS: Readonly<Record<AimResult, string>> = { met: "Met", "not met": "Not met", "can't tell": "Can't tell" };

/** One sentence: the verdict with the numbers of what decided it, what else came of it, and what keeps it from being certain. */
function sentence(result: AimResult, attributes: readonly AimAttribute[], decisive: AimAttribute | undefined, reservation: string | undefined): string {
  const told = decisive === undefined ? attributes.filter((attribute) => attribute.result === result) : [decisive];
  const rest = attributes.filter((attribute) => !told.includes(attribute));
  const why = listed(told.map(({ attribute, seen }) => `${attribute}: ${seen}`));
  const others = RESULTS.flatMap((each) => {
    const names = rest.filter((attribute) => attribute.result === each).map(({ attribute }) => attribute);
    return names.length === 0 ? [] : [`${RESTS[each]} for ${listed(names)}`];
  });
  const doubt = reservation === undefined ? [] : [`but ${reservation}`];
  return `${[`${HEADS[result]} for ${why}`, ...others, ...doubt].join("; ")}.`;
}

const RESULTS: readonly AimResult[] = ["met", "not met", "can't tell"];
const RESTS: Readonly<Record<AimResult, string>> = { met: "met", "not met": "not met", "can't tell": "can't tell" };
