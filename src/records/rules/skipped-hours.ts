import { problemAt, type Place, type Problem } from "../../problems/index.js";
import type { FieldPath } from "../text/yaml-places.js";
import { skippedHour, type CivilTime } from "../time/index.js";

/** Finds every time that falls in an hour the zone's clocks skipped. */
export function validateHours(written: unknown, zone: string, placeOf: (path: FieldPath) => Place): Problem[] {
  return civilTimes(written, []).flatMap(([path, civil]) => {
    const next = civil.time === undefined ? undefined : skippedHour(civil, zone);
    return next === undefined ? [] : [problemAt("record/hour-skipped", placeOf(path), { zone, next: next.text })];
  });
}

function civilTimes(value: unknown, path: FieldPath): [FieldPath, CivilTime][] {
  // A quantity holds no time; records are mostly quantities.
  if (typeof value !== "object" || value === null || "kind" in value) return [];
  if (isCivilTime(value)) return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((item, index) => civilTimes(item, [...path, index]));
  return Object.entries(value).flatMap(([key, inner]) => civilTimes(inner, [...path, key]));
}

function isCivilTime(value: object): value is CivilTime {
  return "date" in value && typeof value.date === "string" && "text" in value;
}
