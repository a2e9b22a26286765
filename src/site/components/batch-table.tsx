import { FIGURE_TABLE, type BatchSummary } from "../../report/index.js";
import { useLink } from "../page/page-context.js";
import { shortDate } from "../text/printed-date.js";
import { Figure } from "./figure.js";
import { Swatch } from "./swatch.js";
import { WideTable } from "./wide-table.js";

/** The figures a list has room for. */
const LISTED = ["original-gravity", "abv", "bitterness", "color", "dry-hop-dose"] as const;
const HEADS: ReadonlyMap<string, string> = new Map(FIGURE_TABLE.map(({ id, title }) => [id, title]));

export interface BatchTableProps {
  readonly rows: readonly BatchSummary[];
  readonly label: string;
  /** Where a figure of a batch is worked out, as a path in the site. */
  readonly working: (slug: string, figure: string) => string | undefined;
  /** Whether batches can be chosen here, to be set side by side. */
  readonly picks?: boolean;
}

/** Batches in a table. The list page's script can sort and filter it; it is complete without. */
export function BatchTable({ rows, label, working, picks = false }: BatchTableProps) {
  return (
    <WideTable label={label}>
      <table class="batch-table">
        <thead>
          <tr>
            <th scope="col">Batch</th>
            <th scope="col">Brewed</th>
            <th scope="col">Dry hops</th>
            {LISTED.map((id) => <th key={id} scope="col" class="quantity">{HEADS.get(id)}</th>)}
          </tr>
        </thead>
        <tbody>{rows.map((row) => <Row key={row.slug} row={row} working={working} picks={picks} />)}</tbody>
      </table>
    </WideTable>
  );
}

interface RowProps {
  readonly row: BatchSummary;
  readonly working: BatchTableProps["working"];
}

function Row({ row, working, picks = false }: RowProps & { readonly picks?: boolean }) {
  const link = useLink();
  return (
    <tr data-words={[row.brewer, row.style, row.season, row.series].filter((word) => word !== undefined).join(" ")}>
      <th scope="row" data-sort={row.batch}>
        {picks ? <label class="pick needs-script"><input type="checkbox" value={row.slug} aria-label={`Choose ${row.batch} to set it beside others`} /></label> : null}
        <a href={link(`batches/${row.slug}.html`)}><b><bdi>{row.batch}</bdi></b> <bdi>{row.title}</bdi></a>
        <span class="row-note">{row.style === undefined ? null : <bdi>{row.style}</bdi>}{row.brewer === undefined ? null : <>{row.style === undefined ? "by " : ", by "}<bdi>{row.brewer}</bdi></>}</span>
      </th>
      <td data-sort={row.brewed} data-head={row.status === "planned" ? "To be brewed" : "Brewed"}>{shortDate(row.brewed.slice(0, 10))}<span class="row-note">{row.status}</span></td>
      <td data-head="Dry hops" class={row.hops.length === 0 ? "none" : undefined}><bdi>{row.hops.length === 0 ? "–" : row.hops.join(", ")}</bdi></td>
      {LISTED.map((id) => <ListedFigure key={id} id={id} row={row} working={working} />)}
    </tr>
  );
}

function ListedFigure({ id, row, working }: RowProps & { readonly id: string }) {
  const figure = row.figures[id];
  if (figure === undefined) return <td class="quantity none">–</td>;
  // A list has no room for ±; the digits are still those that the uncertainty supports.
  return (
    <td class="quantity" data-sort={figure.value} data-head={HEADS.get(id)}>
      {id === "color" ? <><Swatch swatch={row.swatch} /> </> : null}
      <Figure {...figure} brief working={working(row.slug, id)} />
    </td>
  );
}
