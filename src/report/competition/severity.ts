import { coverageFactor, findConnectedGroups, judgeSeverity, type JudgeScore } from "../../statistics/index.js";
import type { SeverityReport } from "../types.js";
import { distinct, type FlightScore } from "./flight-scores.js";
import { listed } from "../season-words.js";

/**
 * How severe each judge was against the others, where the flights are linked by judges who sat at more than one
 * table; a refusal that says why where they aren't. A diagnostic for the club: no place is ever changed by it.
 *
 * @returns undefined where there are too few judges or scores to ask
 */
export function severityOf(scores: readonly FlightScore[]): SeverityReport | undefined {
  const judges = distinct(scores.map(({ judge }) => judge));
  const entries = distinct(scores.map(({ entry }) => entry));
  if (judges.length < 2) return undefined;
  const groups = findConnectedGroups(scores);
  if (groups.length > 1) return refusal(scores, groups.map((group) => group.judges));
  if (scores.length - entries.length - (judges.length - 1) < 1) return undefined;
  return computed(scores);
}

function refusal(scores: readonly FlightScore[], groups: readonly (readonly string[])[]): SeverityReport {
  const named = groups.map((judges) => ({ judges, flights: distinct(scores.filter(({ judge }) => judges.includes(judge)).map(({ flight }) => flight)) }));
  return {
    linked: false, judges: [], groups: named,
    says: `Not told: the flights fall into ${groups.length} groups (${named.map(({ flights }) => listed(flights)).join("; ")}) that share no judge. `
      + "Between them a severe judge can't be told from a weaker table of beers, so no severity is given and scores of different groups aren't compared. "
      + "A judge who sits at a table of each group would link them.",
  };
}

/** Beyond this, differences between judges are more than their scatter. */
const LEVEL = 0.05;

function computed(scores: readonly JudgeScore[]): SeverityReport | undefined {
  const result = judgeSeverity(scores);
  if (!result.linked) return undefined;
  const factor = coverageFactor(0.95, result.degreesOfFreedom);
  const judges = result.judges.map(({ judge, severity, standardError }) => ({
    judge, severity, plusMinus: factor * standardError, sheets: scores.filter((score) => score.judge === judge).length,
  }));
  const differ = result.p < LEVEL;
  return {
    linked: true, judges, groups: [], p: result.p,
    says: `${differ ? "Judges differed in severity by more than their scatter." : "No difference in severity beyond the judges' scatter."} `
      + "Every flight is linked to the others by a judge who sat at both, and the comparison supposes that such a judge was as severe at one table as at the other. "
      + "Severity falls out of the order inside a flight where every judge scored every entry; no score or place was changed by it.",
  };
}
