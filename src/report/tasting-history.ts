import type { Batch } from "../records/index.js";
import { counted } from "./season-words.js";

type Tasting = NonNullable<Batch["tastings"]>[number];
type Sample = NonNullable<Batch["samples"]>[number];
type Package = NonNullable<Batch["package"]>[number];

const DAY_MS = 86_400_000;

/** The sample of this batch that is kept under a name. */
export function keptSampleOf({ samples = [] }: Batch, drawnFrom: string | undefined): Sample | undefined {
  return drawnFrom === undefined ? undefined : samples.find(({ kept }) => kept === drawnFrom);
}

/**
 * What the record shows of how the two samples came to the glass differently: how long each was held,
 * how it was stored, whether only one was carbonated. Sentences; empty where both came the same way.
 */
export function visibleDifferences(batch: Batch, tasting: Tasting, drawnFrom: readonly (string | undefined)[]): string[] {
  const kept = drawnFrom.map((source) => keptSampleOf(batch, source));
  const packed = drawnFrom.map((source) => packageOf(batch, source));
  const keptSays = kept.flatMap((sample) => sample === undefined ? [] : [keptText(sample, tasting)]);
  if (keptSays.length === 0 || (keptSays.length === 2 && sameHistory(kept))) return [];
  const filled = packed.flatMap((one) => one === undefined ? [] : packageText(one, tasting));
  return [...keptSays, ...filled, ...carbonationText(tasting, kept, packed)];
}

function packageOf(batch: Batch, source: string | undefined): Package | undefined {
  return (batch.package ?? []).find(({ into }) => into !== undefined && into === source);
}

function sameHistory([one, other]: readonly (Sample | undefined)[]): boolean {
  return one?.stored !== undefined && one.stored === other?.stored && one.at?.text === other.at?.text;
}

function keptText({ kept = "", at, stored }: Sample, { date }: Tasting): string {
  const days = at === undefined || date === undefined ? undefined : daysBetween(at.date, date.date);
  const drawn = days === undefined || days < 0 ? "at a time that isn't recorded" : `${counted(days, "day", "days")} before the tasting`;
  return `The sample kept as ${kept} was drawn ${drawn}${stored === undefined ? "; how it was kept isn't recorded" : ` and kept so: ${stored}`}.`;
}

function packageText({ into, date }: Package, tasting: Tasting): string[] {
  if (into === undefined || date === undefined || tasting.date === undefined) return [];
  const filled = into === "bottles" ? "bottles were" : `${into} was`;
  const days = daysBetween(date.date, tasting.date.date);
  return days < 0 ? [] : [`The ${filled} filled ${counted(days, "day", "days")} before the tasting.`];
}

/** Only where the record leaves open whether carbonation differed. */
function carbonationText({ differs }: Tasting, kept: readonly (Sample | undefined)[], packed: readonly (Package | undefined)[]): string[] {
  const carbonation = packed.find((one) => one !== undefined)?.measured ?? packed.find((one) => one !== undefined)?.carbonation;
  const flat = kept.find((sample) => sample !== undefined);
  if (differs !== undefined || carbonation === undefined || flat === undefined) return [];
  return [`The packaged beer is carbonated (${carbonation.text}); whether the sample kept as ${flat.kept ?? ""} was isn't recorded.`];
}

function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00Z`) - Date.parse(`${from}T00:00Z`)) / DAY_MS);
}
