import { liftsOf, ownTastings, scoredAttributes } from "./season-lifts.js";
import { shownDirection } from "./tasting-says-scores.js";
import type { BatchReport, SeriesAttribute, SeriesTastings, SeriesVersion } from "./types.js";

/** Attributes scored in fewer versions have nothing to stand beside. */
const LEAST_VERSIONS = 2;
/** Below this no course over the versions is claimed (recommendation). */
const LEAST_FOR_COURSE = 6;

/**
 * The same attributes, version after version of one beer, beside what was changed each time. Each version
 * counts by its own tasting, before against after; versions poured against one another are listed apart,
 * since only they compare two versions with the same tasters on the same day.
 *
 * @param versions in brew order
 */
export function seriesTastings(versions: readonly BatchReport[]): SeriesTastings | undefined {
  const attributes = scoredAttributes(versions).map((attribute) => seriesAttribute(attribute, versions)).filter(({ versions: scored }) => scored.length >= LEAST_VERSIONS);
  const against = versions.flatMap(({ batch, slug, tastings }) => tastings.flatMap((tasting, index) =>
    pouredVersion(tasting.samples, batch, versions) ? [{ batch, slug, number: index + 1, name: tasting.name, says: tasting.says }] : []));
  if (attributes.length === 0 && against.length === 0) return undefined;
  return { attributes, against, says: says(attributes, versions) };
}

function seriesAttribute(attribute: string, versions: readonly BatchReport[]): SeriesAttribute {
  return { attribute, versions: liftsOf(attribute, versions).map(({ batch, attribute: scored }) => versionOf(batch, scored)) };
}

function versionOf(batch: BatchReport, scored: BatchReport["tastings"][number]["attributes"][number]): SeriesVersion {
  const dose = batch.figures["dry-hop-dose"];
  const direction = shownDirection(scored);
  const reservation = ownTastings(batch).find(({ attributes }) => attributes.includes(scored))?.reservation;
  return {
    batch: batch.batch, slug: batch.slug, tasters: scored.tasters, lift: scored.lift,
    ...(scored.low === undefined || scored.high === undefined ? {} : { low: scored.low, high: scored.high }),
    ...(direction === undefined ? {} : { shown: direction }),
    ...(dose === undefined ? {} : { doseGPerL: dose.value }),
    ...(batch.comparison === undefined ? {} : { changed: batch.comparison.says }),
    ...(reservation === undefined ? {} : { reservation }),
  };
}

/** Whether another version of the series was poured beside this one. */
function pouredVersion(samples: Readonly<Record<string, string>>, own: string, versions: readonly BatchReport[]): boolean {
  return Object.values(samples).some((drawn) => versions.some(({ batch }) => batch !== own && drawn.startsWith(`${batch}/`)));
}

function says(attributes: readonly SeriesAttribute[], versions: readonly BatchReport[]): string[] {
  const most = Math.max(0, ...attributes.map(({ versions: scored }) => scored.length));
  return [
    "Each figure is how far the tasters of that day scored the attribute higher after the dry hop than before. Other days had other tasters: the moves stand beside each other, the scores themselves don't.",
    ...(most < LEAST_FOR_COURSE
      ? [`With ${most} scored versions of ${versions.length} no course over the versions is claimed.`]
      : ["Versions differ in more than one thing, so a course over them can't be put down to any one of them."]),
  ];
}
