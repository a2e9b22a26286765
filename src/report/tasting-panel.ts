import type { ScoreRow } from "../records/index.js";
import { concordance, intraclassCorrelation, mean, type IntraclassEstimate } from "../statistics/index.js";
import { DESCRIBED_ONLY } from "./tasting-limits.js";
import { panelSays } from "./tasting-panel-says.js";
import type { Estimate, PanelReport, PanelTaster } from "./types.js";

/** One taster: a row a cell (sample with attribute), a column a serving. */
interface Served {
  readonly taster: string;
  readonly cells: readonly (readonly number[])[];
}

const LEAST_CELLS = 3;
const LEAST_TASTERS = 3;

/**
 * Whether tasters who were served the same cups more than once repeat themselves, and how far they agree;
 * undefined where nothing was served twice. Tasters who missed a serving play no part. Servings of one
 * taster are never counted as further tasters: they say how far to trust that taster.
 *
 * Sources: Shrout & Fleiss, Psychological Bulletin 86 (1979); Kendall & Babington Smith (1939). Published.
 */
export function panelReport(rows: readonly ScoreRow[]): PanelReport | undefined {
  const servings = Math.max(1, ...rows.map(({ serving }) => serving));
  if (servings < 2) return undefined;
  const served = completelyServed(rows, servings);
  const cells = served[0]?.cells.length ?? 0;
  if (served.length === 0) return undefined;
  const means = served.map(({ cells: own }) => own.map(mean));
  const told = {
    cells, servings,
    tasters: served.map((one, place) => tasterReport(one, means, place)),
    ...(cells >= LEAST_CELLS && served.length >= LEAST_TASTERS ? agreementOf(means) : {}),
  };
  return { ...told, says: panelSays(told, new Set(rows.map(({ taster }) => taster)).size) };
}

/** Tasters with one score for every cell and serving, in the order of the file. */
function completelyServed(rows: readonly ScoreRow[], servings: number): Served[] {
  const cells = [...new Set(rows.map(({ sample, attribute }) => JSON.stringify([attribute, sample])))];
  const scores = new Map(rows.map(({ taster, sample, attribute, serving, score }) => [JSON.stringify([taster, attribute, sample, serving]), score]));
  const numbers = Array.from({ length: servings }, (_, index) => index + 1);
  return [...new Set(rows.map(({ taster }) => taster))].flatMap((taster): Served[] => {
    const own = cells.map((cell) => numbers.flatMap((serving) => scores.get(JSON.stringify([taster, ...JSON.parse(cell) as string[], serving])) ?? []));
    return own.every((row) => row.length === servings) ? [{ taster, cells: own }] : [];
  });
}

function tasterReport({ taster, cells }: Served, means: readonly (readonly number[])[], place: number): PanelTaster {
  const deviations = cells.flatMap((row) => row.map((score) => (score - mean(row)) ** 2));
  const freedom = cells.reduce((total, row) => total + row.length - 1, 0);
  const repeatability = cells.length >= LEAST_CELLS && varies(cells.map(mean)) ? intraclassCorrelation(cells).single.oneWay : undefined;
  const withOthers = correlationWithOthers(means, place);
  return {
    taster,
    scatter: Math.sqrt(deviations.reduce((total, each) => total + each, 0) / freedom),
    ...(repeatability === undefined ? {} : { repeatability: estimateOf(repeatability) }),
    ...(withOthers === undefined ? {} : { withOthers }),
  };
}

/** Spearman's, as the concordance of two. */
function correlationWithOthers(means: readonly (readonly number[])[], place: number): number | undefined {
  const own = means[place] ?? [];
  const others = means.filter((_, other) => other !== place);
  if (others.length < LEAST_TASTERS - 1 || own.length < LEAST_CELLS) return undefined;
  const together = own.map((_, cell) => mean(others.map((row) => row[cell] ?? 0)));
  return varies(own) && varies(together) ? concordance([own, together]).meanSpearman : undefined;
}

/** @param means one row a taster, one column a cell */
function agreementOf(means: readonly (readonly number[])[]): Pick<PanelReport, "agreement" | "order"> {
  const byCell = (means[0] ?? []).map((_, cell) => means.map((row) => row[cell] ?? 0));
  const agreement = varies(byCell.map(mean)) ? intraclassCorrelation(byCell).single.agreement : undefined;
  const order = means.some(varies) ? concordance(means) : undefined;
  return {
    ...(agreement === undefined ? {} : { agreement: estimateOf(agreement) }),
    ...(order === undefined ? {} : { order: { w: order.w, chanceFloor: order.chanceFloor, ...(means.length > DESCRIBED_ONLY ? { p: order.p } : {}) } }),
  };
}

function varies(values: readonly number[]): boolean {
  return new Set(values).size > 1;
}

function estimateOf({ estimate, interval }: IntraclassEstimate): Estimate {
  return { value: estimate, ...interval };
}
