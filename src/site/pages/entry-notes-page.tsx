import type { BatchReport, EntryNote, EntryNotesReport, StyleRow } from "../../report/index.js";
import type { LargePart } from "../content-key.js";
import { FIGURE_TABLE } from "../../report/index.js";
import { Figure } from "../components/figure.js";
import { batchPage, entryNotesPath } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";
import { useWords } from "../page/use-words.js";

/** The notes a brewer takes to the registrar, on one printed page. No blind code, no registration id: slips come from `sheets`. */
export function entryNotesPage(site: Site, report: BatchReport, key: LargePart): SiteFile[] {
  const path = entryNotesPath(report);
  const { entryNotes } = report;
  if (path === undefined || entryNotes === undefined) return [];
  return [pageFile(site, {
    path, title: `${report.batch}, entry notes`, description: `Entry notes of ${report.batch}, ${report.title}, on one printed page.`,
    kind: "sheet", madeFrom: [key], content: () => <EntryNotes report={report} notes={entryNotes} />,
  })];
}

interface EntryNotesProps {
  readonly report: BatchReport;
  readonly notes: EntryNotesReport;
}

function EntryNotes({ report, notes }: EntryNotesProps) {
  const words = useWords();
  const link = useLink();
  return (
    <article class="sheet entry-notes">
      <p class="screen-only"><a href={link(`${batchPage(report.slug)}.html`)}>Back to the batch</a>. This page prints on one sheet. For the brewer and the registrar, not for judges.</p>
      <h1>Entry notes: <bdi>{report.title}</bdi></h1>
      <p class="overline">
        Batch <bdi>{report.batch}</bdi>, brewed {printedDate(report.brewed)}{report.brewer === undefined ? null : <> by <bdi>{report.brewer}</bdi></>}
        {report.packaged === undefined ? ", not packaged yet" : <>, packaged {printedDate(report.packaged.slice(0, 10))}</>}
      </p>
      {notes.notes.map((note) => <OneCompetition key={note.competition + (note.style ?? "")} note={note} />)}
      <div class="entry-columns">
        <div>
          <section><h2>Ingredients</h2>{notes.ingredients.length === 0 ? <p>None are recorded.</p> : notes.ingredients.map((line) => <p key={line}><bdi>{words(line)}</bdi></p>)}</section>
          <section><h2>Serving</h2><p>{words(notes.serving)}</p></section>
          {notes.words === undefined ? null : <section><h2>In the brewer’s words</h2><p dir="auto">{notes.words}</p></section>}
          {notes.earlier.length === 0 ? null : <section><h2>Earlier results</h2><ul>{notes.earlier.slice(-MOST_EARLIER).map((line) => <li key={line}>{line}</li>)}</ul></section>}
        </div>
        <div>
          <section><h2>Bottles</h2><ul class="tick-list">{notes.checklist.map((line) => <li key={line}>{words(line)}</li>)}</ul></section>
          <section class="sheet-caution">{notes.cautions.map((line) => <p key={line}><b>Caution.</b> {line}</p>)}</section>
        </div>
      </div>
    </article>
  );
}

const MOST_EARLIER = 4;

function OneCompetition({ note }: { readonly note: EntryNote }) {
  const { competition, date, style, styleRows, declaring, allergensSay, daysOld } = note;
  return (
    <section>
      <h2><bdi>{competition}</bdi>, {printedDate(date)}</h2>
      <p>Entered as <b><bdi>{style ?? "no style recorded"}</bdi></b>.{daysOld === undefined ? null : <> On the day <span class="number">{daysOld}</span> days in the package.</>}</p>
      {styleRows.length === 0 ? null : (
        <table>
          <thead><tr><th scope="col">Figure</th><th scope="col">This batch</th><th scope="col">Style</th><th scope="col">Stands</th></tr></thead>
          <tbody>{styleRows.map((row) => <Row key={row.figure} row={row} />)}</tbody>
        </table>
      )}
      <p><b>Allergens.</b> <bdi>{allergensSay}</bdi></p>
      <p><b>Declaring.</b> <bdi>{declaring.join(" ")}</bdi></p>
    </section>
  );
}

const TITLES: ReadonlyMap<string, string> = new Map(FIGURE_TABLE.map(({ id, title }) => [id, title]));
const STANDS = { pass: "inside", watch: "on the line", fail: "outside", unknown: "not known" } as const;

function Row({ row: { figure, value, unit, plusMinus, low, high, verdict, planned, basis } }: { readonly row: StyleRow }) {
  return (
    <tr>
      <th scope="row">{TITLES.get(figure) ?? figure}</th>
      <td>{value === undefined ? "not known" : <Figure value={value} unit={unit} basis={planned === true ? "planned" : basis} saysBasis {...(plusMinus === undefined ? {} : { plusMinus })} />}</td>
      <td><Figure value={low} low={low} high={high} unit={unit} /></td>
      <td>{STANDS[verdict]}</td>
    </tr>
  );
}
