/**
 * Places in a report that a reader must never meet: NaN, an infinity, null, or a sentence with one of them in it.
 * Paths such as `batches.0.figures.abv.value`.
 */
export function faultsIn(value: unknown, path = ""): string[] {
  if (value === null || value === undefined) return [`${path} is ${String(value)}`];
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${String(value)}`];
  if (typeof value === "string") return /\b(?:NaN|undefined|null|Infinity)\b|\[object /u.test(value) ? [`${path} says "${value}"`] : [];
  if (typeof value !== "object") return typeof value === "boolean" ? [] : [`${path} is a ${typeof value}`];
  return Object.entries(value).flatMap(([key, inner]) => faultsIn(inner, path === "" ? key : `${path}.${key}`));
}
