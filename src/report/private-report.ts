import type { BatchRecord, CivilTime, CompetitionRecord, Log } from "../records/index.js";
import { clubReport } from "./club-report.js";
import { privateCompetition, slipsOf } from "./competition/private-competition.js";
import { tastingPlans } from "./tasting-plan.js";
import type { PrivateReport } from "./types.js";

/** What sheets are wanted for: one batch, published or not, or one competition, released or not. */
export type PrivateTarget =
  | { readonly kind: "batch"; readonly record: BatchRecord }
  | { readonly kind: "competition"; readonly record: CompetitionRecord };

/**
 * What must not be published of one batch or competition: plans with their keys. Nothing of it is
 * part of a LogReport, so no page of the site can come to show it.
 */
export function buildPrivateReport(log: Log, target: PrivateTarget, asOf: CivilTime): PrivateReport {
  const shared = { kind: target.kind, slug: target.record.slug, club: clubReport(log, asOf) };
  if (target.kind === "competition") return { ...shared, name: target.record.slug, title: target.record.data.name, tastings: [], ...privateCompetition(target.record, log) };
  const { batch, title } = target.record.data;
  return { ...shared, name: batch, title, tastings: tastingPlans(target.record, log, asOf), ...slipsOf(target.record, log, asOf) };
}
