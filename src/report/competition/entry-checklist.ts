import { formatNumber } from "../../units/index.js";
import type { BatchReport, PackageReport } from "../types.js";

/** How a beer is to be poured, as far as the record says. */
export function servingWords({ packages }: BatchReport): string {
  const kept = packages.find(({ temperatureC }) => temperatureC !== undefined)?.temperatureC;
  const usual = "Panels commonly pour ale at 10 to 12 °C; a competition pours at what the style asks (common practice).";
  return kept === undefined ? `At what temperature it is served isn't recorded. ${usual}` : `Kept at ${formatNumber(kept, "C").value} °C by the record. ${usual}`;
}

/** What a bottle of unknown rating is commonly trusted to, volumes of CO2. */
const USUAL_BOTTLE_VOL = 3;

/** Before the bottles are handed in. Common practice of club competitions; the competition's own rules stand over it. */
export function entryChecklist({ packages }: BatchReport): string[] {
  const kegged = packages.some(({ into }) => into !== "bottles");
  return [
    ...(kegged ? ["Filled from the keg: bottles clean, cold and purged, filled from the bottom, capped on foam; the same beer in each."] : []),
    ...(packages.some(({ into }) => into === "bottles") ? ["Bottle-conditioned: upright and cold for the last days, so that the sediment stays down."] : []),
    `Carbonation ${carbonationWords(packages)}.`,
    "Bottles plain: no label, no raised mark, nothing on the cap, or the cap blacked.",
    "One slip a bottle, held by a rubber band; no glue, no tape. A slip carries the registration id and nothing else.",
    "Fill to the usual height; a low or overfull bottle is noted.",
    "As many bottles as the rules ask for, and one kept at home to taste on the day.",
    "This page stays with the brewer and the registrar: judges never see it.",
  ];
}

function carbonationWords(packages: readonly PackageReport[]): string {
  const measured = packages.find(({ carbonationMeasured }) => carbonationMeasured !== undefined)?.carbonationMeasured;
  const asked = packages.find(({ carbonationAsked }) => carbonationAsked !== undefined)?.carbonationAsked;
  if (measured !== undefined) return `measured at ${formatNumber(measured, "vol").value} vol`;
  return asked === undefined ? "isn't recorded: taste one first" : `asked for ${formatNumber(asked, "vol").value} vol, not measured: taste one first`;
}

export function entryCautions({ packages }: BatchReport): string[] {
  const most = Math.max(0, ...packages.map(({ carbonationMeasured = 0, carbonationAsked = 0 }) => Math.max(carbonationMeasured, carbonationAsked)));
  const strong = most > USUAL_BOTTLE_VOL
    ? [`${formatNumber(most, "vol").value} vol is more than a bottle of unknown rating is trusted to: use bottles rated for it.`] : [];
  return [
    ...strong,
    "A bottle is a vessel under pressure: warmth raises it. Pack upright, padded and cool, never loose in a hot car, and within what the bottle is rated for; ask a carrier before sending any.",
    "It holds alcohol: hand it only to people of age, and let nobody drive who has tasted.",
  ];
}
