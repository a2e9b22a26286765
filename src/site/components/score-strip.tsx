import type { SheetReport } from "../../report/index.js";

export interface ScoreStripProps {
  readonly sheets: readonly SheetReport[];
  readonly agreed: number | undefined;
  /** The ends of the strip, in points: the same for a whole table, so that its rows can be compared. */
  readonly from: number;
  readonly to: number;
}

const WIDTH = 120;
const EDGE = 4;

/** First scores as points, the agreed one as a stroke. The words beside it say the same, so it is kept from screen readers. */
export function ScoreStrip({ sheets, agreed, from, to }: ScoreStripProps) {
  const at = (points: number): number => Math.round((EDGE + (WIDTH - 2 * EDGE) * (points - from) / (to - from)) * 10) / 10;
  const totals = sheets.map(({ total }) => total);
  return (
    <svg class="band score-strip" viewBox={`0 0 ${WIDTH} 14`} width={WIDTH} height="14" aria-hidden="true" focusable="false">
      <line class="axis" x1="0" x2={WIDTH} y1="7" y2="7" />
      {totals.length < 2 ? null : <line class="interval" x1={at(Math.min(...totals))} x2={at(Math.max(...totals))} y1="7" y2="7" />}
      {agreed === undefined ? null : <line class="agreed" x1={at(agreed)} x2={at(agreed)} y1="0" y2="14" />}
      {sheets.map(({ judge, total }) => <circle key={judge} class="point" cx={at(total)} cy="7" r="2.5" />)}
    </svg>
  );
}

/** The strip's ends for a table: whole tens around every score. */
export function stripEnds(scores: readonly number[]): { readonly from: number; readonly to: number } {
  if (scores.length === 0) return { from: 0, to: 10 };
  const from = Math.floor(Math.min(...scores) / 10) * 10;
  return { from, to: Math.max(from + 10, Math.ceil(Math.max(...scores) / 10) * 10) };
}
