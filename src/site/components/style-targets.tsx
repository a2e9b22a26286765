import { FIGURE_TABLE, type StyleRow } from "../../report/index.js";
import { sentence } from "../text/printed-words.js";
import { bandSketch } from "../views/band-sketch.js";
import { Verdict } from "./check-list.js";
import { Figure, NotMeasured } from "./figure.js";
import { useWords } from "../page/use-words.js";

const TITLES: ReadonlyMap<string, string> = new Map(FIGURE_TABLE.map(({ id, title }) => [id, title]));

export interface StyleTargetsProps {
  readonly rows: readonly StyleRow[];
  readonly style: string;
  /** Why a figure isn't there, by figure id. */
  readonly missing: Readonly<Record<string, string>>;
}

/** Each figure against the style's range: the range as a band, the batch as a point with its interval, the verdict in words. */
export function StyleTargets({ rows, style, missing }: StyleTargetsProps) {
  if (rows.length === 0) return null;
  return (
    <table class="style-targets stack">
      <caption>Held against {style}</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          <th scope="col">Style</th>
          <th scope="col">This batch</th>
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>{rows.map((row) => <Target key={row.figure} row={row} missing={missing[row.figure]} />)}</tbody>
    </table>
  );
}

/** Inside the range the columns say it all. */
const TOLD: ReadonlySet<string> = new Set(["watch", "fail"]);

function Target({ row, missing }: { readonly row: StyleRow; readonly missing: string | undefined }) {
  const words = useWords();
  return (
    <tr>
      <th scope="row">{TITLES.get(row.figure) ?? row.figure}{TOLD.has(row.verdict) ? <span class="row-note">{words(sentence(row.says))}</span> : null}</th>
      <td data-head="Style"><Figure value={row.low} low={row.low} high={row.high} unit={row.unit} /><Band row={row} /></td>
      <td data-head="This batch">{row.value === undefined ? <NotMeasured why={missing ?? "no reading gives it yet"} /> : <Measured row={row} value={row.value} />}</td>
      <td data-head="Verdict"><Verdict word={row.verdict} /></td>
    </tr>
  );
}

function Measured({ row, value }: { readonly row: StyleRow; readonly value: number }) {
  return <Figure value={value} unit={row.unit} basis={row.planned === true ? "planned" : row.basis} saysBasis {...(row.plusMinus === undefined ? {} : { plusMinus: row.plusMinus })} />;
}

/** The words beside it say the same, so the sketch is kept from screen readers. */
function Band({ row }: { readonly row: StyleRow }) {
  const sketch = bandSketch(row);
  return (
    <svg class="band" viewBox="0 0 120 14" width="120" height="14" aria-hidden="true" focusable="false">
      <line class="axis" x1="0" x2="120" y1="7" y2="7" />
      <rect class="range" x={sketch.bandFrom} width={sketch.bandTo - sketch.bandFrom} y="2" height="10" />
      {sketch.interval === undefined ? null : <line class="interval" x1={sketch.interval[0]} x2={sketch.interval[1]} y1="7" y2="7" />}
      {sketch.point === undefined ? null : <circle class="point" cx={sketch.point} cy="7" r="2.5" />}
    </svg>
  );
}
