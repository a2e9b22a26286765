/**
 * Adaptive quadrature with the 7-point Gauss and 15-point Kronrod rules.
 *
 * Source: Kronrod 1965; Piessens et al., QUADPACK (Springer, 1983), nodes and weights of QK15.
 * From memory; the tests check the rule on polynomials up to its degree.
 */

/** Node on [0, 1] (used on both sides of the middle), Kronrod weight, Gauss weight (0 where Gauss has no node). */
const nodes = [
  [0.991455371120812639, 0.022935322010529225, 0],
  [0.949107912342758525, 0.063092092629978553, 0.129484966168869693],
  [0.864864423359769073, 0.10479001032225018, 0],
  [0.74153118559939444, 0.140653259715525919, 0.279705391489276668],
  [0.58608723546769113, 0.169004726639267903, 0],
  [0.405845151377397167, 0.19035057806478541, 0.381830050505118945],
  [0.207784955007898468, 0.204432940075298892, 0],
] as const;
const middle = { kronrod: 0.209482141084727828, gauss: 0.417959183673469388 };

const deepest = 40;

/**
 * ∫ fn from `low` to `high`, both finite.
 *
 * @param tolerance absolute, on each piece; the usual error is far smaller
 * @throws RangeError when `fn` gives no finite number
 */
export function integrate(fn: (x: number) => number, low: number, high: number, tolerance = 1e-11): number {
  return refine(fn, low, high, tolerance, deepest);
}

function refine(fn: (x: number) => number, low: number, high: number, tolerance: number, depth: number): number {
  const { kronrod, gauss } = applyRule(fn, (low + high) / 2, (high - low) / 2);
  if (!Number.isFinite(kronrod)) throw new RangeError(`integrate: no finite integral from ${low} to ${high}`);
  if (Math.abs(kronrod - gauss) <= tolerance || depth === 0) return kronrod;
  const half = (low + high) / 2;
  return refine(fn, low, half, tolerance, depth - 1) + refine(fn, half, high, tolerance, depth - 1);
}

function applyRule(fn: (x: number) => number, center: number, halfWidth: number): { kronrod: number; gauss: number } {
  const atCenter = fn(center);
  let kronrod = middle.kronrod * atCenter;
  let gauss = middle.gauss * atCenter;
  for (const [node, kronrodWeight, gaussWeight] of nodes) {
    const both = fn(center - halfWidth * node) + fn(center + halfWidth * node);
    kronrod += kronrodWeight * both;
    gauss += gaussWeight * both;
  }
  return { kronrod: kronrod * halfWidth, gauss: gauss * halfWidth };
}
