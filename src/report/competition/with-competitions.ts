import type { BatchRecord, CivilTime, CompetitionRecord, Log } from "../../records/index.js";
import type { BatchReport, CompetitionReport } from "../types.js";
import { batchEntries, type ReleasedEntries } from "./batch-entries.js";
import type { Brewed } from "./candidates.js";
import { competitionReport } from "./competition-report.js";
import { entryNotes } from "./entry-notes.js";
import { releasedCompetitions } from "./released.js";

const computed = new WeakMap<CompetitionRecord, { readonly pages: string; readonly report: CompetitionReport }>();

/** The results that are out. The same record among the same published batches gives the same report object. */
export function competitionResults(log: Log, published: readonly BatchRecord[], asOf: CivilTime): ReleasedEntries[] {
  const pages = new Map(published.map(({ data, slug }) => [data.batch, slug]));
  const names = JSON.stringify([...pages]);
  return releasedCompetitions(log, asOf).map((record) => ({
    report: rememberedReport(record, pages, names),
    batches: new Map(record.entries.flatMap(({ entry, batch }) => (batch === undefined ? [] : [[entry, batch]]))),
  }));
}

function rememberedReport(record: CompetitionRecord, pages: ReadonlyMap<string, string>, names: string): CompetitionReport {
  const held = computed.get(record);
  if (held?.pages === names) return held.report;
  const { feedback, handles } = record.data;
  const report = competitionReport(record, { scores: feedback === "public", names: handles === "shown", pageOf: (batch) => pages.get(batch) });
  computed.set(record, { pages: names, report });
  return report;
}

const completed = new WeakMap<BatchReport, { readonly key: string; readonly report: BatchReport }>();

/** Adds to each batch its entries in competitions that are out, then the notes for those it enters. */
export function withCompetitions(brewed: readonly Brewed[], log: Log, results: readonly ReleasedEntries[]): Brewed[] {
  const entered = brewed.map(({ scene, report }) => {
    const entries = batchEntries(scene.record, results);
    return { scene, report: entries.length === 0 ? report : { ...report, entries } };
  });
  return entered.map((each, index) => {
    const notes = entryNotes(each, log.competitions, entered);
    return { scene: each.scene, report: sameAgain(brewed[index]?.report ?? each.report, each.report, notes === undefined ? {} : { entryNotes: notes }) };
  });
}

/** The report object of last time while nothing that is added has changed. */
function sameAgain(base: BatchReport, report: BatchReport, added: Partial<BatchReport>): BatchReport {
  if (report.entries === undefined && added.entryNotes === undefined) return report;
  const key = JSON.stringify([report.entries, added]);
  const held = completed.get(base);
  if (held?.key === key) return held.report;
  const whole = { ...report, ...added };
  completed.set(base, { key, report: whole });
  return whole;
}
