import type { VersionRow } from "../../report/index.js";
import { useWords } from "../page/use-words.js";
import { WideTable } from "./wide-table.js";

const PARTS: readonly (readonly [part: VersionRow["part"], title: string])[] = [["recipe", "Recipe"], ["process", "Process"], ["result", "Result"]];

export interface VersionTableProps {
  /** Batch numbers, oldest first: a column each. */
  readonly batches: readonly string[];
  readonly rows: readonly VersionRow[];
}

/** What changed from version to version; what never did is folded away. */
export function VersionTable({ batches, rows }: VersionTableProps) {
  const changed = rows.filter((row) => row.changed);
  const kept = rows.filter((row) => !row.changed);
  return (
    <>
      {changed.length === 0 ? <p>Nothing on record changed from one version to the next.</p> : <Rows caption="What changed; a change from the version before in bold" batches={batches} rows={changed} />}
      {kept.length === 0 ? null : (
        <details>
          <summary>What stayed as it was, or can’t be told apart ({kept.length} rows)</summary>
          <Rows caption="What stayed" batches={batches} rows={kept} />
        </details>
      )}
    </>
  );
}

function Rows({ caption, batches, rows }: VersionTableProps & { readonly caption: string }) {
  const words = useWords();
  return (
    <WideTable label={caption}>
      <table class="versions">
        <caption>{caption}</caption>
        <thead>
          <tr><th scope="col">What</th>{batches.map((batch) => <th key={batch} scope="col"><bdi>{batch}</bdi></th>)}</tr>
        </thead>
        {PARTS.filter(([part]) => rows.some((row) => row.part === part)).map(([part, title]) => (
          <tbody key={part}>
            <tr><th scope="rowgroup" colspan={batches.length + 1}>{title}</th></tr>
            {rows.filter((row) => row.part === part).map(({ what, cells }) => (
              <tr key={what}>
                <th scope="row"><bdi>{what}</bdi></th>
                {cells.map(({ text, changed }, index) => <td key={index}><bdi>{changed ? <b>{words(text)}</b> : words(text)}</bdi></td>)}
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </WideTable>
  );
}
