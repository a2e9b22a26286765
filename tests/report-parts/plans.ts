import { logFilesOf, parseLog } from "../../src/records/index.js";
import { buildPrivateReport, type PrivateReport, type TastingPlan } from "../../src/report/index.js";

/** Front matter of a batch that is brewed a day after the last, with what a test adds. */
export function recordText(batch: string, more = "", day = 1): string {
  return `---\ntitle: Tideline Pale\nbatch: ${batch}\nbrewed: 2026-03-${String(day).padStart(2, "0")}\n${more}---\n`;
}

/** The private report of TP-03 in a log of the records given by file name; fails where the log has a problem. */
export function privateReportOf(records: Readonly<Record<string, string>>): PrivateReport {
  const files = Object.fromEntries(Object.entries(records).map(([name, text]) => [`batches/${name}`, text]));
  const { log, problems } = parseLog(logFilesOf(files));
  if (problems.length > 0) throw new Error(JSON.stringify(problems, null, 2));
  const record = log.batches.find(({ data }) => data.batch === "TP-03");
  if (record === undefined) throw new Error("no TP-03");
  return buildPrivateReport(log, { kind: "batch", record }, { text: "2026-04-01 12:00", date: "2026-04-01", time: "12:00" });
}

/** The first tasting planned by a record of TP-03. */
export function planOf(more: string, others: Readonly<Record<string, string>> = {}): TastingPlan {
  const [plan] = privateReportOf({ "tp-03.md": recordText("TP-03", more, 9), ...others }).tastings;
  if (plan === undefined) throw new Error("no tasting is planned");
  return plan;
}
