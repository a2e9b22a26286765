import type { Problem } from "../../problems/index.js";
import type { CompetitionReport } from "./competition-types.js";
import type { CompetitionDay, SlipReport } from "./day-types.js";
import type { ClubReport } from "./season-types.js";

/** What must not be published of one batch or competition: what its sheets on paper are made from. */
export interface PrivateReport {
  readonly kind: "batch" | "competition";
  /** As a person names it: the batch number, or the competition's folder. */
  readonly name: string;
  /** The same as a folder's name. */
  readonly slug: string;
  readonly title: string;
  readonly club: ClubReport;
  /** In the order of the record; a suggestion where it plans none. Empty for a competition. */
  readonly tastings: readonly TastingPlan[];
  /** The day of a competition. */
  readonly day?: CompetitionDay;
  /** All its results, where scores and comments don't go on the site. */
  readonly feedback?: CompetitionReport;
  /** For the bottles of a batch that enters a competition. */
  readonly slips?: readonly SlipReport[];
  /** Why sheets can't be made; then none are. */
  readonly problems?: readonly Problem[];
}

/** One tasting to come, decided before anyone pours. */
export interface TastingPlan {
  /** From 1, its place among the record's tastings. */
  readonly number: number;
  readonly name: string;
}
