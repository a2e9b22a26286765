/** More names than any list that people choose from; a limit keeps hostile records from taking long. */
const MOST_KNOWN = 600;

/**
 * The known name a misspelt one most likely stands for, or undefined when none is near.
 * Case, spaces, hyphens and underscores don't count as differences.
 *
 * @param written what was found
 * @param known the names that would have been right
 * @param most letters that may differ; else a third of them, at least one; none in names of one or two letters
 */
export function nearestName(written: string, known: Iterable<string>, most?: number): string | undefined {
  const target = folded(written);
  const allowed = most ?? (target.length <= 2 ? 0 : Math.max(1, Math.floor(target.length / 3)));
  let nearest: string | undefined;
  let least = allowed + 1;
  let seen = 0;
  for (const name of known) {
    seen += 1;
    if (seen > MOST_KNOWN) break;
    const candidate = folded(name);
    if (Math.abs(candidate.length - target.length) >= least) continue;
    const distance = editDistance(target, candidate);
    if (distance < least) [nearest, least] = [name, distance];
  }
  return nearest;
}

/** A name as compared: lower case, no accents, no spaces, hyphens or underscores; the first 60 letters. */
export function folded(name: string): string {
  return name.normalize("NFKD").replaceAll(/[\p{M}\s_-]+/gu, "").toLowerCase().slice(0, 60);
}

/**
 * Letters to insert, drop, replace or swap with their neighbour to get from one word to the other
 * (optimal string alignment: Damerau 1964 with adjacent swaps, each letter edited once).
 */
export function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const same = from[row - 1] === to[column - 1] ? 0 : 1;
      let least = Math.min(at(last, column) + 1, at(current, column - 1) + 1, at(last, column - 1) + same);
      if (row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]) {
        least = Math.min(least, at(beforeLast, column - 2) + 1);
      }
      current.push(least);
    }
    [beforeLast, last] = [last, current];
  }
  return at(last, to.length);
}

const at = (row: readonly number[], column: number): number => row[column] ?? 0;
