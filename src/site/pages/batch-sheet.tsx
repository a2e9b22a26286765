import type { BatchReport, RecipeLine } from "../../report/index.js";
import type { LargePart } from "../content-key.js";
import { Figure } from "../components/figure.js";
import { useLink } from "../page/page-context.js";
import { QrCode } from "../components/qr-code.js";
import { siteAddress } from "../page/site-address.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { useWords } from "../page/use-words.js";
import type { SiteFile } from "../site-file.js";
import { printedDate, shortDate } from "../text/printed-date.js";
import { sentence } from "../text/printed-words.js";
import { WORKING_ONLY } from "../views/part-figures.js";
import { figureRows } from "../views/figure-rows.js";
import { FIGURE_TABLE } from "../../report/index.js";

/** What fits one printed page: more than this is left to the record, and said. */
const MOST_LINES = 26;
const MOST_EVENTS = 18;
const MOST_FIGURES = 40;

/** The record of one batch on one printed page, A4 or Letter, with room to write what isn't measured yet. */
export function batchSheet(site: Site, report: BatchReport, key: LargePart): SiteFile {
  return pageFile(site, {
    path: `batches/${report.slug}-sheet.html`,
    title: `${report.batch}, printed record`,
    description: `The record of ${report.batch}, ${report.title}, on one printed page.`,
    kind: "sheet",
    madeFrom: [key],
    content: () => <Sheet site={site} report={report} />,
  });
}

function Sheet({ site, report }: { readonly site: Site; readonly report: BatchReport }) {
  const link = useLink();
  const { batch, title, style, brewed, brewer, status } = report;
  const { club } = site.inputs.log;
  return (
    <article class="sheet">
      <p class="screen-only"><a href={link(`batches/${report.slug}.html`)}>Back to the batch</a>. This page prints on one sheet.</p>
      {club.url === undefined ? null : <QrCode address={siteAddress(club.url, `batches/${report.slug}.html`)} />}
      <h1><bdi>{batch}</bdi>: <bdi>{title}</bdi></h1>
      <p class="overline">
        {club.name}. {style === undefined ? null : <><bdi>{style}</bdi>. </>}
        {status === "planned" ? "To be brewed" : "Brewed"} {printedDate(brewed)}{brewer === undefined ? null : <> by <bdi>{brewer}</bdi></>}. {sentence(status)}
      </p>
      <div class="sheet-columns">
        <RecipeLines report={report} />
        <Events report={report} />
        <Figures site={site} report={report} />
      </div>
    </article>
  );
}

function RecipeLines({ report: { recipe } }: { readonly report: BatchReport }) {
  const words = useWords();
  const lines: readonly RecipeLine[] = [
    ...recipe.grist, ...recipe.water, ...recipe.mash, ...recipe.kettleHops, ...(recipe.yeast === undefined ? [] : [recipe.yeast]),
    ...recipe.additions, ...recipe.dryHops,
  ];
  if (lines.length === 0) return <section><h2>Recipe</h2><p>Not recorded.</p></section>;
  return (
    <section>
      <h2>Recipe</h2>
      <table>
        <tbody>
          {lines.slice(0, MOST_LINES).map((line, index) => (
            <tr key={index}><td>{words(line.amount)}</td><th scope="row"><bdi>{line.what}</bdi> <span class="row-note"><bdi>{words(line.detail)}</bdi></span></th></tr>
          ))}
        </tbody>
      </table>
      <More than={MOST_LINES} of={lines.length} />
    </section>
  );
}

function Events({ report: { timeline } }: { readonly report: BatchReport }) {
  const words = useWords();
  const events = timeline?.events ?? [];
  return (
    <section>
      <h2>Days</h2>
      {events.length === 0 ? <p>No day is recorded.</p> : (
        <table>
          <tbody>
            {events.slice(0, MOST_EVENTS).map((event, index) => (
              <tr key={index}><td>{shortDate(event.at)}</td><td><bdi>{words(event.label)}</bdi>{event.planned === true ? <i> (planned)</i> : null}</td></tr>
            ))}
          </tbody>
        </table>
      )}
      <More than={MOST_EVENTS} of={events.length} />
    </section>
  );
}

/** Steps on the way to other figures stay on the batch page. */
const SHEET_FIGURES: ReadonlySet<string> = new Set(FIGURE_TABLE.map(({ id }) => id).filter((id) => !WORKING_ONLY.has(id)));

function Figures({ site, report }: { readonly site: Site; readonly report: BatchReport }) {
  const rows = figureRows(report, site.methods, SHEET_FIGURES).filter((row) => row.measured ?? row.planned);
  if (rows.length === 0) return <section><h2>Figures</h2><p>Nothing is measured yet.</p></section>;
  return (
    <section>
      <h2>Figures</h2>
      <table>
        <thead><tr><th scope="col">Figure</th><th scope="col"><i>Planned</i></th><th scope="col">From readings, computed unless marked</th></tr></thead>
        <tbody>
          {rows.slice(0, MOST_FIGURES).map(({ id, title, measured, planned }) => (
            <tr key={id}>
              <th scope="row">{title}</th>
              <td>{planned === undefined ? null : <Figure {...planned} basis="planned" />}</td>
              <td class={measured === undefined ? "to-write" : undefined}>{measured === undefined ? null : <Figure {...measured} saysBasis={measured.basis === "measured"} />}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <More than={MOST_FIGURES} of={rows.length} />
    </section>
  );
}

function More({ than, of }: { readonly than: number; readonly of: number }) {
  return of <= than ? null : <p>{of - than} more stand in the record.</p>;
}
