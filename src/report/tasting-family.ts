import { adjustHolm } from "../statistics/index.js";
import type { AttributeReport } from "./types.js";

/**
 * Allows for several attributes on one sheet. The primary one, named before tasting, is tested first
 * and alone. The others follow by Holm among themselves, none below the primary's p: a step once
 * failed stops what comes after, so the family as a whole keeps its level. Without a primary
 * attribute all share Holm.
 *
 * Source: Holm, Scandinavian Journal of Statistics 6 (1979); fixed order first: Maurer, Hothorn &
 * Lehmacher (1995). From memory.
 */
export function adjustedInOrder(reports: readonly AttributeReport[]): AttributeReport[] {
  const first = reports.find(({ primary, p }) => primary && p !== undefined)?.p ?? 0;
  const followers = reports.filter(({ primary, p }) => !primary && p !== undefined);
  const byHolm = adjustHolm(followers.map(({ p }) => p ?? 1));
  const adjusted = new Map(followers.map((report, index) => [report, Math.max(first, byHolm[index] ?? 1)]));
  return reports.map((report) => report.p === undefined ? report : { ...report, adjusted: adjusted.get(report) ?? report.p });
}
