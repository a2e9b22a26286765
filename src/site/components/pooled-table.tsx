import type { PooledReport } from "../../report/index.js";
import { Figure } from "./figure.js";

/** What the season's tastings say together, attribute by attribute; those too few to pool are folded away. */
export function PooledTable({ pooled }: { readonly pooled: Readonly<Record<string, PooledReport>> }) {
  const reports = Object.values(pooled);
  if (reports.length === 0) return <p>No tasting with scores is recorded in this season.</p>;
  const together = reports.filter(({ estimate }) => estimate !== undefined);
  const few = reports.filter(({ estimate }) => estimate === undefined);
  return (
    <>
      {together.length === 0 ? <p>Too few batches were tasted to pool them: five are needed for an attribute.</p>
        : <Rows caption="How far attributes moved, on the scale 0 to 10, all tastings together" rows={together} />}
      {few.length === 0 ? null : (
        <details>
          <summary>Attributes tasted in fewer than five batches ({few.length})</summary>
          <Rows caption="Shown, not pooled" rows={few} />
        </details>
      )}
    </>
  );
}

function Rows({ caption, rows }: { readonly caption: string; readonly rows: readonly PooledReport[] }) {
  return (
    <table class="pooled">
      <caption>{caption}</caption>
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
