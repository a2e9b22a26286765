import { fUpperTail } from "../distributions/f-ratio.js";
import { sum } from "../numerics/sums.js";
import { mean } from "./sample.js";

export interface OneWayAnova {
  readonly sumSquaresBetween: number;
  readonly degreesBetween: number;
  readonly meanSquareBetween: number;
  readonly sumSquaresWithin: number;
  readonly degreesWithin: number;
  readonly meanSquareWithin: number;
  readonly fRatio: number;
  readonly p: number;
  readonly rSquared: number;
}

/**
 * One-way analysis of variance: do groups differ more than their members do?
 *
 * Source: NIST StRD, analysis of variance, definitions in the data files. Published.
 *
 * @param groups at least two, each with a value, at least one with two
 * @throws RangeError when no group varies within itself: there is nothing to compare with
 */
export function oneWayAnova(groups: readonly (readonly number[])[]): OneWayAnova {
  if (groups.length < 2) throw new RangeError(`oneWayAnova requires at least 2 groups, got ${groups.length}`);
  const count = groups.reduce((total, group) => total + group.length, 0);
  // One shift for all: data such as 107.868 1568 differ in the last digits only.
  const origin = groups[0]?.[0] ?? 0;
  const shifted = groups.map((group) => group.map((value) => value - origin));
  const grand = mean(shifted.flat());
  const sumSquaresBetween = sum(shifted.map((group) => group.length * (mean(group) - grand) ** 2));
  const sumSquaresWithin = sum(shifted.flatMap((group) => squaredDeviations(group)));
  const degreesWithin = count - groups.length;
  if (degreesWithin < 1) throw new RangeError("oneWayAnova requires a group with at least 2 values");
  if (sumSquaresWithin === 0) throw new RangeError("oneWayAnova requires values that vary within a group");
  return table(sumSquaresBetween, groups.length - 1, sumSquaresWithin, degreesWithin);
}

function table(sumSquaresBetween: number, degreesBetween: number, sumSquaresWithin: number, degreesWithin: number): OneWayAnova {
  const meanSquareBetween = sumSquaresBetween / degreesBetween;
  const meanSquareWithin = sumSquaresWithin / degreesWithin;
  const fRatio = meanSquareBetween / meanSquareWithin;
  return {
    sumSquaresBetween,
    degreesBetween,
    meanSquareBetween,
    sumSquaresWithin,
    degreesWithin,
    meanSquareWithin,
    fRatio,
    p: fUpperTail(fRatio, degreesBetween, degreesWithin),
    rSquared: sumSquaresBetween / (sumSquaresBetween + sumSquaresWithin),
  };
}

function squaredDeviations(group: readonly number[]): number[] {
  const center = mean(group);
  return group.map((value) => (value - center) ** 2);
}
