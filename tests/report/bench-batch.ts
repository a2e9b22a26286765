import { logFilesOf, parseLog, type Log } from "../../src/records/index.js";
import { buildLogReport, type BatchReport, type CheckReport, type LogReport } from "../../src/report/index.js";

/** Front matter by top-level key; undefined leaves the key out. */
export type Fields = Readonly<Record<string, string | undefined>>;

/** Hours after pitching and the value then; straight lines between. */
export type Corners = readonly (readonly [hour: number, value: number])[];

export interface Around {
  /** `2026-04-01` unless said. */
  readonly asOf?: string;
  /** shared/equipment.yaml; the bench's own unless said. */
  readonly equipment?: string;
  readonly club?: string;
  /** shared/styles.yaml */
  readonly styles?: string;
  /** The beer's temperature, logged each hour. */
  readonly temperature?: Corners;
  /** Further files, beside the record. */
  readonly files?: Readonly<Record<string, string>>;
}

export const BENCH = `bench:
  fermenter: {shape: conical, volume: 30 L}
  boil_off: 3 L/h
  readings:
    hydrometer: {within: 0.001, calibrated: 20 C}
    thermometer: {within: 0.3 C}
    scale: {within: 1 g}
    volume: {within: 0.25 L}
    ph: {within: 0.05}
`;

/** Every batch here is pitched at this hour 0, in a zone without a change of clocks. */
const PITCHED_MS = Date.UTC(2026, 2, 7, 18);

/** Civil time so many hours after pitching: `at(24)` is "2026-03-08 18:00". */
export function at(hour: number): string {
  return new Date(PITCHED_MS + hour * 3_600_000).toISOString().slice(0, 16).replace("T", " ");
}

/** A file of readings, one at each hour given, on straight lines between the corners. */
export function logOf(corners: Corners, hours: readonly number[], header = "temperature [C]", write = (value: number) => value.toFixed(4)): string {
  return [`time,${header}`, ...hours.map((hour) => `${at(hour)},${write(valueAt(corners, hour))}`), ""].join("\n");
}

/** From the first corner to the last in equal steps. */
export function everyHours(corners: Corners, step: number): number[] {
  const [first, last] = [corners[0]![0], corners.at(-1)![0]];
  return Array.from({ length: Math.round((last - first) / step) + 1 }, (_, index) => first + index * step);
}

export function valueAt(corners: Corners, hour: number): number {
  const next = Math.max(1, corners.findIndex(([corner]) => corner >= hour));
  const [[h0, v0], [h1, v1]] = [corners[next - 1]!, corners[next]!];
  return v0 + ((v1 - v0) * (hour - h0)) / (h1 - h0);
}

/** A record's text: what every record needs, and what the test gives. */
export function recordText(fields: Fields): string {
  const whole: Fields = { title: "Bench beer", batch: "BB-01", brewed: "2026-03-07", equipment: "bench", yeast: `{pitched: ${at(0)}}`, ...fields };
  const lines = Object.entries(whole).flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`]));
  return ["---", ...lines, "---", ""].join("\n");
}

/** Several batches as one log; a problem in them is a mistake in the test. */
export function logFrom(batches: readonly Fields[], around: Around = {}): Log {
  const records = batches.map((fields, index) => [`batches/b${String(index)}/index.md`, recordText(fields)] as const);
  const { temperature, files = {} } = around;
  const beside = temperature === undefined ? files : { "fermentation.csv": logOf(temperature, everyHours(temperature, 1)), ...files };
  const logs = batches.flatMap((_, index) => Object.entries(beside).map(([name, text]) => [`batches/b${String(index)}/${name}`, text] as const));
  const { log, problems } = parseLog(logFilesOf({
    ...Object.fromEntries([...records, ...logs]),
    "shared/equipment.yaml": around.equipment ?? BENCH,
    "shared/club.yaml": around.club ?? "name: Bench\nzone: UTC\naltitude: 0 m\n",
    ...(around.styles === undefined ? {} : { "shared/styles.yaml": around.styles }),
  }));
  const errors = problems.filter(({ severity }) => severity === "error");
  if (errors.length > 0) throw new Error(errors.map(({ file, line, field, expected, found }) => `${file}:${line} ${field}: ${expected}, found ${found}`).join("\n"));
  return log;
}

export function logReportOf(batches: readonly Fields[], around: Around = {}): LogReport {
  const [date = "", time] = (around.asOf ?? "2026-04-01").split(" ");
  const text = around.asOf ?? "2026-04-01";
  return buildLogReport(logFrom(batches, around), { asOf: { text, date, ...(time === undefined ? {} : { time }) } });
}

/** One batch's report. */
export function batchOf(fields: Fields, around: Around = {}): BatchReport {
  const [batch] = logReportOf([fields], around).batches;
  if (batch === undefined) throw new Error("the batch has no report");
  return batch;
}

/** One check of a batch; undefined where the record doesn't raise it. */
export function checkOf(id: string, fields: Fields, around: Around = {}): CheckReport | undefined {
  return batchOf(fields, around).checks.find((check) => check.id === id);
}
