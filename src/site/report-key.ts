import type { BatchReport } from "../report/index.js";
import { largePart, type LargePart } from "./content-key.js";

const parts = new WeakMap<BatchReport, LargePart>();

/** A batch's report as part of a key: hashed once an object, and only when a key is asked for. */
export function reportKey(report: BatchReport): LargePart {
  const part = parts.get(report) ?? largePart(report);
  parts.set(report, part);
  return part;
}
