import type { BatchReport, NextStep } from "../../report/index.js";
import { Figure } from "../components/figure.js";
import { Lead } from "../components/lead.js";
import { Swatch } from "../components/swatch.js";
import { brewDayPath } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import { printedDate } from "../text/printed-date.js";
import { PART_FIGURES } from "../views/part-figures.js";
import type { FigureRow } from "../views/figure-rows.js";
import { rowsOf, type BatchView } from "./batch-view.js";
import { Synopsis } from "./part.js";

/** The first screen: what was tried and whether it worked, in words; the few numbers everybody asks for in the margin. */
export function BatchOpening({ view }: { readonly view: BatchView }) {
  const { report } = view;
  return (
    <header class="opening batch-opening">
      <p class="overline"><Overline report={report} /></p>
      <h1 dir="auto">{report.title}</h1>
      <div class="opening-words"><Lead text={report.summary === "" ? "Nothing but its name and its brew date is recorded yet." : report.summary} /></div>
      <NextSteps steps={report.next} />
      <InShort view={view} />
      <Synopsis />
    </header>
  );
}

function Overline({ report }: { readonly report: BatchReport }) {
  const { batch, style, brewed, brewer, status, packaged } = report;
  return (
    <>
      <b><bdi>{batch}</bdi></b>
      {style === undefined ? null : <>, <bdi>{style}</bdi></>}
      , {status === "planned" ? "to be brewed" : "brewed"} {printedDate(brewed)}
      {brewer === undefined ? null : <> by <bdi>{brewer}</bdi></>}
      , {packaged === undefined ? status : `packaged ${printedDate(packaged)}`}
    </>
  );
}

function InShort({ view }: { readonly view: BatchView }) {
  const { report } = view;
  const rows = rowsOf(view, PART_FIGURES.inShort).filter((row) => row.measured ?? row.planned);
  return (
    <div class="margin in-short">
      {rows.length === 0 ? <p>Nothing is measured yet.</p> : (
        <table>
          <caption>In short</caption>
          <tbody>{rows.map((row) => <ShortRow key={row.id} row={row} report={report} />)}</tbody>
        </table>
      )}
      <Belongs report={report} />
    </div>
  );
}

function ShortRow({ row, report }: { readonly row: FigureRow; readonly report: BatchReport }) {
  return (
    <tr>
      <th scope="row">{row.title}</th>
      <td>
        {row.measured !== undefined ? <Figure {...row.measured} saysBasis working={row.working} /> : null}
        {row.measured === undefined && row.planned !== undefined ? <Figure {...row.planned} basis="planned" saysBasis working={row.plannedWorking} /> : null}
        {row.id === "color" && report.swatch !== undefined ? (
          <span class="row-note"><Swatch swatch={report.swatch} /> through <Figure value={report.swatch.glassCm} unit="cm" /> of beer</span>
        ) : null}
      </td>
    </tr>
  );
}

function Belongs({ report }: { readonly report: BatchReport }) {
  const link = useLink();
  const { series, seriesSlug, season, seasonSlug, slug } = report;
  const brewDay = brewDayPath(report);
  return (
    <>
      {series === undefined && season === undefined ? null : (
        <p>
          {series === undefined || seriesSlug === undefined ? null : <>One of the series <a href={link(`series/${seriesSlug}.html`)}><bdi>{series}</bdi></a>. </>}
          {season === undefined || seasonSlug === undefined ? null : <>Part of the season <a href={link(`seasons/${seasonSlug}.html`)}><bdi>{season}</bdi></a>.</>}
        </p>
      )}
      <p>
        {brewDay === undefined ? null : <><a href={link(brewDay)}>Brew-day sheet</a>, </>}
        <a href={link(`batches/${slug}-sheet.html`)}>Printed record</a>, <a href={link("compare.html") + `#${slug}`}>set beside others</a>, <a href="#share">pass it on</a>. Data: <a href={link(`batches/${slug}.json`)}>report as JSON</a>, <a href={link(`batches/${slug}.csv`)}>figures as CSV</a>.
      </p>
    </>
  );
}

const STATE: Readonly<Record<NextStep["state"], string>> = {
  overdue: "overdue since", due: "due", blocked: "held back, planned for", later: "on",
};

function stateWords({ state, when }: NextStep): string {
  return `${STATE[state]} ${printedDate(when)}`;
}

/** What an open batch needs, and when. */
export function NextSteps({ steps }: { readonly steps: readonly NextStep[] }) {
  const words = useWords();
  if (steps.length === 0) return null;
  return (
    <div class="next-steps">
      <p><b>What it needs next</b></p>
      <ul>
        {steps.map((step) => (
          <li key={`${step.id} ${step.when}`}>
            <b>{step.step}</b>, {stateWords(step)}. {words(step.says)}
          </li>
        ))}
      </ul>
    </div>
  );
}
