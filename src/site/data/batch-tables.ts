import { FIGURE_TABLE, type BatchReport, type FigureBasis, type FigureReport, type PlannedReport } from "../../report/index.js";
import { csvText } from "./csv.js";
import type { DataColumn } from "./data-column.js";

export const BATCH_COLUMNS: readonly DataColumn<BatchReport>[] = [
  { name: "batch", type: "string", description: "Batch number, unique in the log", value: (row) => row.batch },
  { name: "title", type: "string", description: "What the brewer calls it", value: (row) => row.title },
  { name: "brewed", type: "date", description: "Brew date, civil", value: (row) => row.brewed.slice(0, 10) },
  { name: "status", type: "string", description: "How far it is", value: (row) => row.status },
  { name: "brewer", type: "string", description: "Brewer’s handle", value: (row) => row.brewer },
  { name: "season", type: "string", description: "Season it belongs to", value: (row) => row.season },
  { name: "series", type: "string", description: "Series of versions it belongs to", value: (row) => row.series },
  { name: "style", type: "string", description: "Style it is held against", value: (row) => row.style },
  { name: "dry_hops", type: "string", description: "Hops of the dry hop, separated by semicolons", value: (row) => [...new Set(row.dryHops.map(({ hop }) => hop))].join(";") },
  { name: "report", type: "string", description: "The whole report as JSON, relative to this file", value: (row) => `../batches/${row.slug}.json` },
];

/** One figure of one batch, with what it rests on. */
interface FigureRow {
  readonly batch: string;
  readonly id: string;
  readonly basis: FigureBasis | "planned";
  readonly figure: FigureReport | PlannedReport;
}

/** Each row has its own figure, so its unit and method stand beside it. */
const IN_ROW = { unitField: "unit", methodField: "method" } as const;

export const FIGURE_COLUMNS: readonly DataColumn<FigureRow>[] = [
  { name: "batch", type: "string", description: "Batch number", value: (row) => row.batch },
  { name: "figure", type: "string", description: "Figure id", value: (row) => row.id },
  { name: "basis", type: "string", description: "measured: read, at most carried to another scale or to the instrument’s reference temperature; computed: worked out from readings; planned: from the plan or the recipe", value: (row) => row.basis },
  { name: "value", type: "number", ...IN_ROW, description: "Value, in the unit of the row", value: (row) => row.figure.value },
  { name: "unit", type: "string", description: "Unit of value, plus_minus, model, low and high", value: (row) => row.figure.unit },
  { name: "plus_minus", type: "number", ...IN_ROW, description: "Half-width at 95 % of what the readings leave open; empty where no reading carries a limit", value: ({ figure }) => ("plusMinus" in figure ? figure.plusMinus : undefined) },
  { name: "model", type: "number", ...IN_ROW, description: "Half-width at 95 % of what the relation itself is worth; empty where not known", value: ({ figure }) => ("model" in figure ? figure.model : undefined) },
  { name: "low", type: "number", ...IN_ROW, description: "Lower end where a plan gives a band", value: ({ figure }) => ("low" in figure ? figure.low : undefined) },
  { name: "high", type: "number", ...IN_ROW, description: "Upper end where a plan gives a band", value: ({ figure }) => ("high" in figure ? figure.high : undefined) },
  { name: "method", type: "string", description: "Id of the method: ../methods/<method>.html", value: (row) => row.figure.method },
];

export function batchesCsv(batches: readonly BatchReport[]): string {
  return table(BATCH_COLUMNS, batches);
}

/** One row a figure, what came from readings before what was planned, in the order of the figures table. */
export function figuresCsv(batches: readonly BatchReport[]): string {
  return table(FIGURE_COLUMNS, batches.flatMap(figureRows));
}

function figureRows(report: BatchReport): FigureRow[] {
  const { batch } = report;
  return FIGURE_TABLE.flatMap(({ id }) => {
    const [measured, planned] = [report.figures[id], report.planned[id]];
    return [
      ...(measured === undefined ? [] : [{ batch, id, basis: measured.basis, figure: measured }]),
      ...(planned === undefined ? [] : [{ batch, id, basis: "planned" as const, figure: planned }]),
    ];
  });
}

function table<Row>(columns: readonly DataColumn<Row>[], rows: readonly Row[]): string {
  return csvText(columns.map(({ name }) => name), rows.map((row) => columns.map(({ value }) => value(row) ?? "")));
}
