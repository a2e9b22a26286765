import type { FigureRow } from "../views/figure-rows.js";
import { missingByReason } from "../views/figure-rows.js";
import { Figure, NotMeasured } from "./figure.js";

/** Figures of one part of a batch: what was measured beside what was planned, then what was not measured and why. */
export function FigureTable({ rows, caption }: { readonly rows: readonly FigureRow[]; readonly caption: string }) {
  const present = rows.filter((row) => row.measured !== undefined || row.planned !== undefined);
  return (
    <>
      {present.length === 0 ? null : <PresentFigures rows={present} caption={caption} />}
      <MissingFigures rows={rows} />
    </>
  );
}

function PresentFigures({ rows, caption }: { readonly rows: readonly FigureRow[]; readonly caption: string }) {
  const anyMeasured = rows.some((row) => row.measured !== undefined);
  const anyPlanned = rows.some((row) => row.planned !== undefined);
  return (
    <table class={anyMeasured && anyPlanned ? "figures stack" : "figures"}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          {anyMeasured ? <th scope="col">Measured</th> : null}
          {anyPlanned ? <th scope="col"><i>Planned</i></th> : null}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">{row.title}<Notes of={row} /></th>
            {anyMeasured ? <td data-head="Measured">{row.measured === undefined ? "not yet" : <Figure {...row.measured} working={row.working} />}</td> : null}
            {anyPlanned ? <td data-head="Planned">{row.planned === undefined ? "–" : <Figure {...row.planned} basis="planned" working={row.plannedWorking} />}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Notes({ of }: { readonly of: FigureRow }) {
  const notes = [...new Set([...(of.measured?.notes ?? []), ...(of.measured === undefined ? of.planned?.notes ?? [] : [])])];
  return <>{notes.map((note) => <span key={note} class="row-note">{note}</span>)}</>;
}

function MissingFigures({ rows }: { readonly rows: readonly FigureRow[] }) {
  const groups = missingByReason(rows);
  if (groups.length === 0) return null;
  return (
    <ul class="missing-list">
      {groups.map(({ why, titles }) => (
        <li key={why}>{titles.join(", ")}: <NotMeasured why={why} /></li>
      ))}
    </ul>
  );
}
