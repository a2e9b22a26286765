import type { ChangeRow, ComparisonReport } from "../../report/index.js";
import { useWords } from "../page/use-words.js";

const PARTS: readonly (readonly [part: ChangeRow["part"], title: string])[] = [["recipe", "Recipe"], ["process", "Process"], ["result", "Result"]];

const CHANGE: Readonly<Record<ChangeRow["change"], string>> = {
  changed: "changed", within: "within what the readings can tell", same: "as before", unknown: "can’t be compared",
};

export interface ComparisonTableProps {
  readonly comparison: ComparisonReport;
  readonly batch: string;
}

/** The same things in two batches, side by side: what changed first, the rest folded away. */
export function ComparisonTable({ comparison, batch }: ComparisonTableProps) {
  const changed = comparison.rows.filter((row) => row.change === "changed");
  const others = comparison.rows.filter((row) => row.change !== "changed");
  const heads = { before: comparison.with, after: batch };
  return (
    <>
      {changed.length === 0 ? <p>Nothing differs by more than the readings can tell.</p> : <Rows caption="What changed" rows={changed} {...heads} />}
      {others.length === 0 ? null : (
        <details>
          <summary>What stayed as it was, or can’t be told apart ({others.length} rows)</summary>
          <Rows caption="What stayed" rows={others} {...heads} saysChange />
        </details>
      )}
    </>
  );
}

interface RowsProps {
  readonly caption: string;
  readonly rows: readonly ChangeRow[];
  readonly before: string;
  readonly after: string;
  readonly saysChange?: boolean;
}

function Rows({ caption, rows, before, after, saysChange = false }: RowsProps) {
  const words = useWords();
  return (
    <table class="comparison stack">
      <caption>{caption}</caption>
      <thead>
        <tr><th scope="col">What</th><th scope="col"><bdi>{before}</bdi></th><th scope="col"><bdi>{after}</bdi></th></tr>
      </thead>
      {PARTS.filter(([part]) => rows.some((row) => row.part === part)).map(([part, title]) => (
        <tbody key={part}>
          <tr><th scope="rowgroup" colspan={3}>{title}</th></tr>
          {rows.filter((row) => row.part === part).map(({ what, before: was, after: is, change }) => (
            <tr key={what}>
              <th scope="row">{what}{saysChange ? <span class="row-note">{CHANGE[change]}</span> : null}</th>
              <td data-head={before}><bdi>{words(was)}</bdi></td>
              <td data-head={after}><bdi>{words(is)}</bdi></td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}
