import type { Batch, ScoreRow } from "../records/index.js";
import { mean } from "../statistics/index.js";
import { adjustedInOrder } from "./tasting-family.js";
import { changeOf, type TasterPair } from "./tasting-change.js";
import type { Roles } from "./tasting-samples.js";
import type { AttributeReport } from "./types.js";

type Aim = Batch["aim"];

/**
 * How far each attribute moved from before to after, the primary one first, then those of the aim,
 * then the rest in the order of the file. A taster who scored one sample only is left out of that
 * attribute; repeated servings are averaged within the taster, never counted as further votes.
 */
export function attributeReports(rows: readonly ScoreRow[], roles: Roles, aim: Aim): AttributeReport[] {
  const reports = attributesInOrder(rows, aim).flatMap((attribute) => {
    const pairs = pairsOf(rows.filter((row) => row.attribute === attribute), roles);
    return pairs.length === 0 ? [] : [attributeReport(attribute, attribute === aim?.primary, pairs)];
  });
  return adjustedInOrder(reports);
}

function attributesInOrder(rows: readonly ScoreRow[], aim: Aim): string[] {
  const scored = new Set(rows.map(({ attribute }) => attribute));
  const wanted = [...aim?.primary === undefined ? [] : [aim.primary], ...aim?.raise ?? [], ...aim?.lower ?? [], ...aim?.hold ?? []];
  return [...new Set([...wanted.filter((attribute) => scored.has(attribute)), ...scored])];
}

function pairsOf(rows: readonly ScoreRow[], roles: Roles): TasterPair[] {
  const tasters = [...new Set(rows.map(({ taster }) => taster))];
  return tasters.flatMap((taster): TasterPair[] => {
    const scores = (sample: string): number[] =>
      rows.filter((row) => row.taster === taster && row.sample === sample).map(({ score }) => score);
    const [before, after] = [scores(roles.before), scores(roles.after)];
    return before.length === 0 || after.length === 0 ? [] : [[taster, mean(before), mean(after)]];
  });
}

function attributeReport(attribute: string, primary: boolean, pairs: readonly TasterPair[]): AttributeReport {
  const differences = pairs.map(([, before, after]) => after - before);
  return {
    attribute, primary,
    tasters: pairs.length,
    meanBefore: mean(pairs.map(([, before]) => before)),
    meanAfter: mean(pairs.map(([, , after]) => after)),
    lift: mean(differences),
    raised: differences.filter((difference) => difference > 0).length,
    lowered: differences.filter((difference) => difference < 0).length,
    ...changeOf(differences),
    pairs,
  };
}
