/**
 * Several questions of one tasting are one family: the more are asked, the sooner one looks true by
 * chance. List all that were tested, and adjust.
 */

/**
 * Holm's adjusted p: for "which of these do we claim?". Rejecting those at or below alpha keeps
 * the chance of any false claim at alpha.
 *
 * Source: Holm, Scandinavian Journal of Statistics 6 (1979). Published.
 *
 * @returns in the order given, none below its own p, none above 1
 */
export function adjustHolm(ps: readonly number[]): number[] {
  const rising = inOrder("adjustHolm", ps);
  let largest = 0;
  const adjusted = new Map<number, number>();
  for (const [place, index] of rising.entries()) {
    largest = Math.max(largest, Math.min(1, (ps.length - place) * (ps[index] ?? 1)));
    adjusted.set(index, largest);
  }
  return ps.map((_, index) => adjusted.get(index) ?? 1);
}

/**
 * Benjamini and Hochberg's adjusted p: for screening. Rejecting those at or below alpha keeps the
 * expected share of false ones among the claims at alpha.
 *
 * Source: Benjamini & Hochberg, Journal of the Royal Statistical Society B 57 (1995). Published.
 *
 * @returns in the order given, none below its own p, none above 1
 */
export function adjustBenjaminiHochberg(ps: readonly number[]): number[] {
  const rising = inOrder("adjustBenjaminiHochberg", ps);
  let smallest = 1;
  const adjusted = new Map<number, number>();
  for (const [place, index] of [...rising.entries()].reverse()) {
    smallest = Math.min(smallest, (ps.length / (place + 1)) * (ps[index] ?? 1));
    adjusted.set(index, smallest);
  }
  return ps.map((_, index) => adjusted.get(index) ?? 1);
}

function inOrder(caller: string, ps: readonly number[]): number[] {
  const bad = ps.find((p) => !(p >= 0 && p <= 1));
  if (bad !== undefined) throw new RangeError(`${caller} requires p values from 0 to 1, got ${bad}`);
  return ps.map((_, index) => index).sort((a, b) => (ps[a] ?? 1) - (ps[b] ?? 1));
}
