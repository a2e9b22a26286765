import { nearestName, problemAt, type Given, type Place, type Problem, type ProblemCode } from "../../problems/index.js";
import type { PartialBatch } from "../schema/index.js";
import type { FieldPath } from "../text/yaml-places.js";
import { wallMs, type CivilTime } from "../time/index.js";

/** A batch as far as it could be read, and where its fields stand. */
export interface RuleInput {
  readonly batch: PartialBatch;
  readonly placeOf: (path: FieldPath) => Place;
}

/** Looks for one kind of problem between the fields of a batch. */
export type RecordRule = (input: RuleInput) => Problem[];

export function problem<Code extends ProblemCode>({ placeOf }: RuleInput, path: FieldPath, code: Code, given: Given<Code>, found?: string): Problem {
  const place = placeOf(path);
  return problemAt(code, found === undefined ? place : { ...place, found }, given);
}

const MINUTE_MS = 60_000;
const HALF_DAY_MS = 12 * 60 * MINUTE_MS;

/** Whether one time is before another whatever the hour of a date without a time. */
export function isSurelyBefore(one: CivilTime, other: CivilTime): boolean {
  const latest = wallMs(one) + (one.time === undefined ? HALF_DAY_MS - MINUTE_MS : 0);
  const earliest = wallMs(other) - (other.time === undefined ? HALF_DAY_MS : 0);
  return latest < earliest;
}

/** The last move of the beer out of the fermenter, if it is dated. */
export function lastTransfer(batch: PartialBatch): CivilTime | undefined {
  const dated = (batch.transfer ?? []).flatMap(({ at }) => (at === undefined ? [] : [at]));
  return dated.length < (batch.transfer ?? []).length ? undefined : dated.toSorted((a, b) => wallMs(a) - wallMs(b)).at(-1);
}

/** An attribute raised, lowered or held: one of them; the primary among them. */
export const aimsAgree: RecordRule = (input) => {
  const { aim } = input.batch;
  if (aim === undefined) return [];
  const seen = new Map<string, string>();
  const problems: Problem[] = [];
  for (const kind of ["raise", "lower", "hold"] as const) {
    for (const [index, attribute] of (aim[kind] ?? []).entries()) {
      const other = seen.get(attribute);
      if (other === undefined) seen.set(attribute, kind);
      else problems.push(problem(input, ["aim", kind, index], "record/raised-and-lowered", { other }));
    }
  }
  const isNamed = aim.primary === undefined || seen.has(aim.primary);
  return isNamed ? problems : [...problems, problem(input, ["aim", "primary"], "tasting/attribute-unscored", { nearest: nearestName(aim.primary ?? "", seen.keys()), known: [...seen.keys()].join(", ") })];
};

/** A purge by liquid has no cycles, one by cycles no pocket. */
export const purgeIsOneWay: RecordRule = (input) => (input.batch.package ?? []).flatMap(({ purge }, index) => {
  if (purge?.by === undefined) return [];
  const { by } = purge;
  const foreign = by === "liquid" ? (["cycles", "pressure"] as const) : (["left"] as const);
  return foreign.filter((field) => purge[field] !== undefined)
    .map((field) => problem(input, ["package", index, "purge", field], "record/purge-mixed", { by, field }));
});

/** A file of another device is of use only where a column of it is named. */
export const mappedLogNamesColumns: RecordRule = (input) => (input.batch.fermentation?.log ?? []).flatMap((source, index) => {
  const isNamed = source.standard || source.temperature !== undefined || source.gravity !== undefined || source.pressure !== undefined;
  const expects = "the header of a column: temperature, gravity or pressure";
  const path = ["fermentation", "log", index, "temperature"];
  return isNamed ? [] : [problem(input, path, "record/field-missing", { expects, example: "Beer temp (F)", field: "temperature" })];
});
