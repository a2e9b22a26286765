import type { Batch } from "../records/index.js";
import { preferenceTest } from "../statistics/index.js";
import type { Roles } from "./tasting-samples.js";
import type { PreferenceReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/** Which of the two was liked better; votes for neither are reported and never split. Votes for further samples play no part. */
export function preferenceReport({ preference }: Tasting, roles: Roles): PreferenceReport | undefined {
  if (preference === undefined) return undefined;
  const votes = (name: string): number => preference.counts.find(({ sample }) => sample === name)?.count ?? 0;
  const counts = { before: votes(roles.before), after: votes(roles.after), none: preference.none ?? 0 };
  // Nobody chose: any split is as likely as the one seen.
  if (counts.before + counts.after === 0) return { ...counts, p: 1 };
  const { p, share, interval } = preferenceTest({ first: counts.after, second: counts.before, none: counts.none });
  return { ...counts, p, share, ...interval };
}
