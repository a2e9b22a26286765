import type { Batch, BatchRecord, TastingRows } from "../records/index.js";
import { countReports } from "./tasting-counts.js";
import { isOpen } from "./tasting-open.js";
import { panelReport } from "./tasting-panel.js";
import { preferenceReport } from "./tasting-preference.js";
import { rankingReport } from "./tasting-ranking.js";
import { tastingRoles, tastingSamples } from "./tasting-samples.js";
import { tastingSays } from "./tasting-says.js";
import { attributeReports } from "./tasting-scores.js";
import type { TastingReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/**
 * What the tasters found, in the order of the record; tastings that aren't public are left out.
 *
 * "Before" and "after" are the samples of those names, else the first and second as recorded.
 */
export function tastingReports(record: BatchRecord): TastingReport[] {
  return (record.data.tastings ?? []).flatMap((tasting, index) =>
    tasting.public ? [tastingReport(record.data, tasting, record.tastings[index] ?? {})] : []);
}

function tastingReport(batch: Batch, tasting: Tasting, rows: TastingRows): TastingReport {
  const roles = tastingRoles(tasting);
  const preference = preferenceReport(tasting, roles);
  const panel = panelReport(rows.scores ?? []);
  const ranking = rankingReport(rows.ranking ?? [], tasting);
  const report: Omit<TastingReport, "says"> = {
    name: tasting.name ?? "Tasting",
    ...(tasting.date === undefined ? {} : { date: tasting.date.text }),
    samples: Object.fromEntries((tasting.samples ?? []).map(({ sample, value }) => [sample, value])),
    ...(tasting.tasters === undefined ? {} : { tasters: tasting.tasters }),
    ...(tasting.asked === undefined ? {} : { asked: tasting.asked }),
    ...countReports(tasting, roles, batch.aim),
    ...(preference === undefined ? {} : { preference }),
    ...(ranking === undefined ? {} : { ranking }),
    ...(panel === undefined ? {} : { panel }),
    attributes: attributeReports(rows.scores ?? [], roles, batch.aim),
    roles,
    ...tastingSamples(batch, tasting, roles),
  };
  const planned = isOpen(tasting) && rows.scores === undefined && rows.ranking === undefined;
  return { ...report, ...(planned ? { planned } : {}), says: tastingSays(report, tasting, rows) };
}
