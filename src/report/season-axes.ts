import { slugOf } from "../records/index.js";
import { figureEntry } from "./figure-table.js";
import { liftsOf, ownTastings, scoredAttributes } from "./season-lifts.js";
import { uncapitalised } from "./season-words.js";
import type { BatchReport } from "./types.js";

/** What one axis of a relation stands for. */
export interface Axis {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  /** As it stands inside a sentence: "0.12 L more total loss". */
  readonly words: string;
  readonly valueOf: (batch: BatchReport) => { readonly value: number; readonly plusMinus?: number } | undefined;
}

/** Attributes worth a relation of their own; every one more costs the others power. */
const MOST_ATTRIBUTES = 4;
const DATE_LENGTH = "2026-03-07".length;
const DAY_MS = 86_400_000;

export function figureAxis(id: string): Axis {
  const { title, unit } = figureEntry(id);
  return { id, title, unit, words: uncapitalised(title), valueOf: ({ figures }) => figures[id] };
}

/** From the packaging (civil dates) to the first tasting of the batch's own samples. */
export const DAYS_TO_TASTING: Axis = {
  id: "days-to-tasting", title: "Days to the tasting", unit: "d", words: "time to the tasting",
  valueOf: (batch) => {
    const tasted = ownTastings(batch).find(({ date }) => date !== undefined)?.date;
    if (tasted === undefined || batch.packaged === undefined) return undefined;
    const days = (Date.parse(`${tasted.slice(0, DATE_LENGTH)}T00:00Z`) - Date.parse(`${batch.packaged.slice(0, DATE_LENGTH)}T00:00Z`)) / DAY_MS;
    return Number.isFinite(days) && days >= 0 ? { value: days } : undefined;
  },
};

/** What the brewer sets in numbers. */
export const SETTINGS: readonly Axis[] = [figureAxis("dry-hop-dose"), figureAxis("dry-hop-contact"), figureAxis("dry-hop-temperature"), DAYS_TO_TASTING];

/** How far the most scored attributes moved from before to after, those of most batches first. */
export function liftAxes(batches: readonly BatchReport[]): Axis[] {
  const attributes = scoredAttributes(batches).slice(0, MOST_ATTRIBUTES);
  return attributes.map((attribute, index) => ({
    id: liftId(attribute, attributes.slice(0, index)),
    title: `Rise in ${attribute}`,
    unit: "points",
    words: attribute,
    valueOf: (batch) => {
      const lift = liftsOf(attribute, [batch])[0]?.attribute.lift;
      return lift === undefined ? undefined : { value: lift };
    },
  }));
}

/** Two attributes may shorten to one address: the later gets its place as well. */
function liftId(attribute: string, earlier: readonly string[]): string {
  const slug = slugOf(attribute);
  const taken = slug === "" || earlier.some((other) => slugOf(other) === slug);
  return taken ? `lift-${[slug, earlier.length + 1].filter((part) => part !== "").join("-")}` : `lift-${slug}`;
}

/** Share of those who chose, of the first tasting of the batch that asked, %. */
export const PREFERENCE: Axis = {
  id: "preference-share", title: "Share that preferred after", unit: "%", words: "preference for the later sample",
  valueOf: (batch) => {
    const share = ownTastings(batch).find(({ preference }) => preference?.share !== undefined)?.preference?.share;
    return share === undefined ? undefined : { value: 100 * share };
  },
};
