import type { BatchRecord, CivilTime, CompetitionRecord, Log } from "../../records/index.js";
import type { CompetitionReport, PrivateReport, SlipReport } from "../types.js";
import { competitionReport } from "./competition-report.js";
import { planDay } from "./day/competition-day.js";

/** The plan of a competition's day and, where its scores stay off the site, what its entrants are to get. */
export function privateCompetition(record: CompetitionRecord, { styles }: Log): Pick<PrivateReport, "day" | "feedback" | "problems"> {
  const planned = planDay(record, styles);
  if ("problems" in planned) return { problems: planned.problems };
  const hasScores = record.scores.length > 0 && record.data.feedback !== "public";
  return { day: planned.day, ...(hasScores ? { feedback: wholeReport(record) } : {}) };
}

/** Everything, for paper: without links to pages of the site. */
function wholeReport(record: CompetitionRecord): CompetitionReport {
  const report = competitionReport(record, { scores: true, names: true, pageOf: () => "" });
  return { ...report, entries: report.entries.map(({ batch: _batch, ...entry }) => entry) };
}

/** Slips for the bottles of a batch, for competitions still to be held: nothing on them says whose it is. */
export function slipsOf({ data: { batch } }: BatchRecord, { competitions }: Log, asOf: CivilTime): { readonly slips?: readonly SlipReport[] } {
  const slips = competitions.filter(({ data }) => data.date.date >= asOf.date).flatMap(({ slug, data, entries }) => entries.filter((entry) => entry.batch === batch).map(({ entry, style }): SlipReport => ({
    entry, competition: data.name, scans: `${slug} ${entry}`, ...(style === undefined ? {} : { style }),
  })));
  return slips.length === 0 ? {} : { slips };
}
