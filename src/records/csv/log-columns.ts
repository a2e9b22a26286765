import { nearestName } from "../../problems/index.js";
import { unitNamed, unitsOf, type QuantityKind, type Unit } from "../../units/index.js";
import type { Batch } from "../schema/index.js";
import type { CsvTable } from "./table.js";

export type LogSource = NonNullable<NonNullable<Batch["fermentation"]>["log"]>[number];
export type ForeignLog = Extract<LogSource, { standard: false }>;

export const MEASURES = { temperature: "temperature", gravity: "gravity", pressure: "pressure" } as const satisfies Record<string, QuantityKind>;
export type Measure = keyof typeof MEASURES;

/** A column of readings: where it stands and how its numbers are brought to the own unit. */
export interface MeasureColumn {
  readonly header: string;
  readonly index: number;
  readonly unitName: string;
  readonly unit: Unit;
}

export interface LogColumns {
  readonly time: number;
  readonly timeHeader: string;
  readonly measures: ReadonlyMap<Measure, MeasureColumn>;
}

const WITH_UNIT = /^(.*?)\s*\[([^\]]*)\]$/u;
const EXAMPLE: Readonly<Record<Measure, string>> = { temperature: "temperature [C]", gravity: "gravity [SG]", pressure: "pressure [kPa]" };
export const PLAIN_HEADER = "time,temperature [C],gravity [SG]";

/** The columns of the tool's own form: `time`, then a measure and its unit in square brackets each. */
export function plainColumns({ header, problems }: CsvTable): LogColumns | undefined {
  if (header.length === 0) return undefined;
  const measures = new Map<Measure, MeasureColumn>();
  const known = ["time", ...Object.values(EXAMPLE)];
  for (const [index, column] of header.entries()) {
    if (column === "time") continue;
    const [, name = column, unitName] = WITH_UNIT.exec(column) ?? [];
    const cell = { line: 1, column, index, found: column };
    if (isMeasure(name)) {
      const found = measureColumn(name, { header: column, index, unitName });
      if (found === undefined) problems.addCell("csv/column-unit", cell, { example: EXAMPLE[name], units: logUnits(name).join(", ") });
      else measures.set(name, found);
    } else problems.addCell("csv/column-unknown", cell, { nearest: nearestName(name, ["time", ...Object.keys(MEASURES)]), known: known.join(", ") });
  }
  const time = header.indexOf("time");
  if (time === -1) problems.addLine("csv/column-missing", 1, { column: "time" });
  if (measures.size === 0 && problems.isEmpty) problems.addLine("csv/column-missing", 1, { column: EXAMPLE.temperature });
  return time === -1 || measures.size === 0 ? undefined : { time, timeHeader: "time", measures };
}

/** The columns that a record names of another device's file; its others are left alone. */
export function mappedColumns({ header, problems }: CsvTable, source: ForeignLog): LogColumns | undefined {
  if (header.length === 0) return undefined;
  const measures = new Map<Measure, MeasureColumn>();
  const timeHeader = source.time ?? "time";
  const time = placeOf(timeHeader);
  for (const measure of Object.keys(MEASURES) as Measure[]) {
    const column = source[measure];
    if (column === undefined) continue;
    const index = placeOf(column);
    const unitName = source.units?.[measure] ?? WITH_UNIT.exec(column)?.[2];
    const found = measureColumn(measure, { header: column, index, unitName });
    if (index === -1) continue;
    if (found === undefined) problems.addCell("csv/column-unit", { line: 1, column, index, found: column }, { example: `units: {${measure}: ${logUnits(measure)[0] ?? ""}}`, units: logUnits(measure).join(", ") });
    else measures.set(measure, found);
  }
  return time === -1 || measures.size === 0 ? undefined : { time, timeHeader, measures };

  function placeOf(column: string): number {
    const index = header.indexOf(column);
    if (index === -1) problems.addLine("csv/column-missing", 1, { column });
    return index;
  }
}

/** Units that a log's column may be in; a refractometer is read by hand only. */
function logUnits(measure: Measure): string[] {
  return unitsOf(MEASURES[measure]).filter((name) => name !== "Bx" && !name.startsWith("°"));
}

function measureColumn(measure: Measure, { header, index, unitName }: { header: string; index: number; unitName: string | undefined }): MeasureColumn | undefined {
  const name = unitName?.trim() ?? (measure === "gravity" ? "SG" : undefined);
  const unit = name === undefined ? undefined : unitNamed(name, MEASURES[measure]);
  if (name === undefined || unit?.kind !== MEASURES[measure] || name === "Bx") return undefined;
  return { header, index, unitName: name, unit };
}

const isMeasure = (name: string): name is Measure => Object.hasOwn(MEASURES, name);
