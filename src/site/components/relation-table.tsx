import type { GroupReport, RelationReport } from "../../report/index.js";
import { useWords } from "../page/use-words.js";
import { printedProbability } from "../text/printed-quantity.js";
import { WideTable } from "./wide-table.js";

/** What was also asked and has no picture: one line a pair. */
export function RelationTable({ relations, groups }: { readonly relations: readonly RelationReport[]; readonly groups: readonly GroupReport[] }) {
  const asked = relations.length + groups.length;
  if (asked === 0) return null;
  return (
    <details>
      <summary>What was also asked, without an answer beyond chance ({asked} pairs)</summary>
      <WideTable label="Pairs without a picture">
        <table class="pairs">
          <thead>
            <tr><th scope="col">What</th><th scope="col">Against</th><th scope="col">Batches</th><th scope="col">p, adjusted</th><th scope="col">In words</th></tr>
          </thead>
          <tbody>
            {relations.map(({ x, y, xTitle, yTitle, n, adjusted, says }) => (
              <Row key={`${x} ${y}`} what={yTitle} against={xTitle} n={n} adjusted={adjusted} says={says} />
            ))}
            {groups.map(({ by, y, byTitle, yTitle, n, apart, says }) => (
              <Row key={`${by} ${y}`} what={yTitle} against={byTitle} n={n} adjusted={apart?.adjusted} says={says} />
            ))}
          </tbody>
        </table>
      </WideTable>
    </details>
  );
}

interface RowProps {
  readonly what: string;
  readonly against: string;
  readonly n: number;
  readonly adjusted: number | undefined;
  readonly says: string;
}

function Row({ what, against, n, adjusted, says }: RowProps) {
  const words = useWords();
  return (
    <tr>
      <th scope="row">{what}</th>
      <td>{against}</td>
      <td>{n}</td>
      <td>{adjusted === undefined ? "–" : <span class="number">{printedProbability(adjusted)}</span>}</td>
      <td class="row-words"><bdi>{words(says)}</bdi></td>
    </tr>
  );
}
