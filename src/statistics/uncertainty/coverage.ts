import { studentFactor } from "../distributions/student-t.js";
import { standardUncertainty } from "./standard-uncertainty.js";
import { type Uncertain } from "./uncertain.js";

/**
 * Effective degrees of freedom after Welch and Satterthwaite: u⁴ / Σ contribution⁴/ν.
 * Readings left out of `degreesOfFreedom` count as known without limit and add nothing.
 *
 * Source: JCGM 100:2008, G.4.1, equation (G.2b). Published.
 *
 * @param degreesOfFreedom per reading id, each above 0
 * @returns Infinity when no contributing reading has a finite number
 */
export function effectiveDegreesOfFreedom(
  uncertain: Uncertain,
  degreesOfFreedom: Readonly<Record<string, number>>,
): number {
  const known = new Map(Object.entries(degreesOfFreedom));
  for (const [id, nu] of known) {
    if (!(nu > 0)) throw new RangeError(`effectiveDegreesOfFreedom requires positive degrees of freedom, got ${nu} for ${id}`);
  }
  const total = Object.entries(uncertain.contributions).reduce(
    (sum, [id, share]) => sum + share ** 4 / (known.get(id) ?? Infinity),
    0,
  );
  return total === 0 ? Infinity : standardUncertainty(uncertain) ** 4 / total;
}

/**
 * Coverage factor for a level of confidence such as 0.95. The effective degrees of freedom are cut down to
 * the whole number below, as the source advises.
 *
 * Source: JCGM 100:2008, G.3.2 and G.4.1. Published.
 */
export function coverageFactor(level: number, effectiveDegrees = Infinity): number {
  if (!(effectiveDegrees >= 1)) throw new RangeError(`coverageFactor requires at least 1 degree of freedom, got ${effectiveDegrees}`);
  // Student's t with a billion degrees of freedom is the normal distribution to nine digits.
  return studentFactor(level, Math.min(Math.floor(effectiveDegrees), 1e9));
}
