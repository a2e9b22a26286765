import { FIGURE_TABLE, type BatchReport, type FigureReport, type PlannedReport } from "../../report/index.js";
import type { Methods } from "../method-view.js";
import { methodPath, workingPath } from "./working-path.js";

/** One figure of a batch as a table tells it. */
export interface FigureRow {
  readonly id: string;
  readonly title: string;
  readonly meaning: string;
  readonly measured?: FigureReport;
  readonly planned?: PlannedReport;
  /** How the measured value lies to the plan; absent while one of them is. */
  readonly againstPlan?: string;
  readonly missing?: string;
  /** A reading that may still come. */
  readonly isOpen: boolean;
  /** Path in the site of the working, or of the method. */
  readonly working?: string;
  readonly plannedWorking?: string;
}

/** The figures named, in the order of the figures table; those the report says nothing of are left out. */
export function figureRows(report: BatchReport, methods: Methods, ids: ReadonlySet<string>): FigureRow[] {
  return FIGURE_TABLE.filter(({ id }) => ids.has(id) && isTold(report, id)).map(({ id, title, meaning }) => {
    const measured = report.figures[id];
    const planned = report.planned[id];
    const missing = report.missing[id];
    const plan = report.planRows.find(({ figure, verdict }) => figure === id && verdict !== "open");
    return {
      id, title, meaning, isOpen: !FINISHED.has(report.status),
      ...(measured === undefined ? {} : { measured, ...optional("working", workingPath(report, methods, id)) }),
      ...(planned === undefined ? {} : { planned, ...optional("plannedWorking", methodPath(methods, planned.method)) }),
      ...(plan === undefined ? {} : { againstPlan: plan.verdict === "differs" ? plan.says : "as planned" }),
      // What isn't brewed can't have been read: that nothing is known of it needs no list.
      ...(missing === undefined || measured !== undefined || report.status === "planned" ? {} : { missing }),
    };
  });
}

const FINISHED: ReadonlySet<string> = new Set(["packaged", "dumped"]);

/** The gravity that stands for the other one once it is there. */
const INSTEAD: Readonly<Record<string, string>> = { "latest-gravity": "final-gravity", "final-gravity": "latest-gravity" };

function isTold(report: BatchReport, id: string): boolean {
  if (!(id in report.figures) && !(id in report.planned) && (INSTEAD[id] ?? "") in report.figures) return false;
  return id in report.figures || id in report.planned || id in report.missing;
}

/** Missing figures gathered under the reading that would give them, in the order met. */
export function missingByReason(rows: readonly FigureRow[]): { why: string; titles: string[] }[] {
  const groups = new Map<string, string[]>();
  for (const { missing, title } of rows) {
    if (missing !== undefined) groups.set(missing, [...(groups.get(missing) ?? []), title]);
  }
  return [...groups].map(([why, titles]) => ({ why, titles }));
}

function optional<Key extends string>(key: Key, value: string | undefined): Partial<Record<Key, string>> {
  return value === undefined ? {} : ({ [key]: value } as Partial<Record<Key, string>>);
}
