/** One score: who gave it and to what. */
export interface JudgeScore {
  readonly judge: string;
  readonly entry: string;
  readonly score: number;
}

export interface ConnectedGroup {
  readonly judges: readonly string[];
  readonly entries: readonly string[];
}

/**
 * Groups of judges and entries linked by scores: two judges are linked when they scored the same
 * entry, directly or through others. Between groups no difference of judges can be told from one
 * of entries.
 *
 * Source: Weeks & Williams, Technometrics 6 (1964) (connectedness of two-way layouts). From memory.
 *
 * @returns in order of first appearance
 */
export function findConnectedGroups(scores: readonly JudgeScore[]): ConnectedGroup[] {
  const open = new Set(scores);
  const groups: ConnectedGroup[] = [];
  for (const score of scores) if (open.has(score)) groups.push(collect(score, open));
  return groups;
}

/** Takes the score and all that hang together with it out of `open`. */
function collect(first: JudgeScore, open: Set<JudgeScore>): ConnectedGroup {
  const judges = new Set([first.judge]);
  const entries = new Set([first.entry]);
  for (let before = -1; before !== open.size; ) {
    before = open.size;
    for (const score of open) {
      if (!judges.has(score.judge) && !entries.has(score.entry)) continue;
      judges.add(score.judge);
      entries.add(score.entry);
      open.delete(score);
    }
  }
  return { judges: [...judges], entries: [...entries] };
}
