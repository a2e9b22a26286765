import type { PooledReport } from "../../report/index.js";
import { Figure } from "./figure.js";

/** What the season's tastings say together, attribute by attribute. */
export function PooledTable({ pooled }: { readonly pooled: Readonly<Record<string, PooledReport>> }) {
  const rows = Object.values(pooled);
  if (rows.length === 0) return <p>No tasting with scores is recorded in this season.</p>;
  return (
    <table class="pooled">
      <caption>How far attributes moved, on the scale 0 to 10, all tastings together</caption>
      <thead>
        <tr><th scope="col">Attribute</th><th scope="col">Moved, 95 % interval</th><th scope="col">Tastings</th></tr>
      </thead>
      <tbody>
        {rows.map(({ attribute, estimate, low, high, tastings, says }) => (
          <tr key={attribute}>
            <th scope="row"><bdi>{attribute}</bdi><span class="row-note">{says}</span></th>
            <td>
              {estimate === undefined ? "not pooled" : <Figure value={estimate} unit="count" decimals={1} />}
              {low === undefined || high === undefined ? null : <> (<Figure value={low} low={low} high={high} unit="count" decimals={1} />)</>}
            </td>
            <td>{tastings.length}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
