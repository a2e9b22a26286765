import type { CompetitionEntry, CompetitionReport, SheetReport } from "../../report/index.js";
import { EntryFacts, entryTitle } from "../components/entry-name.js";
import { WideTable } from "../components/wide-table.js";
import { competitionPage } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";
import { printedPlace, printedPoints } from "../text/printed-points.js";

/** What the judges wrote of one entry, on a page of its own. */
export function feedbackPage(site: Site, competition: CompetitionReport, entry: CompetitionEntry): SiteFile {
  const { name, slug, date, maximum, agreeWithin } = competition;
  return pageFile(site, {
    path: `competitions/${slug}/${entry.slug}.html`,
    title: `${entryTitle(entry)} at the ${name}`,
    description: `What the judges wrote of ${entryTitle(entry)} at the ${name}.`,
    madeFrom: [entry, name, slug, date, maximum, agreeWithin],
    content: () => <Feedback competition={competition} entry={entry} />,
  });
}

interface FeedbackProps {
  readonly competition: CompetitionReport;
  readonly entry: CompetitionEntry;
}

function Feedback({ competition, entry }: FeedbackProps) {
  const link = useLink();
  const { name, slug, date } = competition;
  return (
    <>
      <header class="opening">
        <p class="overline"><a href={link(`${competitionPage(slug)}.html`)}><bdi>{name}</bdi></a>, {printedDate(date)}</p>
        <h1><bdi>{entryTitle(entry)}</bdi></h1>
        <p class="lead">{resultWords(competition, entry)}</p>
        <p><EntryFacts entry={entry} /></p>
      </header>
      <FeedbackBody competition={competition} entry={entry} />
    </>
  );
}

export function resultWords({ maximum }: CompetitionReport, { place, flight, score, bestOfShow }: CompetitionEntry): string {
  const table = flight === undefined ? "" : ` in flight ${flight}`;
  const won = place === undefined ? `No place${table}` : `${printedPlace(place)}${table}`;
  const best = bestOfShow === undefined ? "" : `, ${printedPlace(bestOfShow)} in best of show`;
  return `${won}${best}${score === undefined ? "" : `, ${printedPoints(score)} of ${printedPoints(maximum)} points`}.`;
}

/** Scores section by section and every comment. Also printed as a private sheet, where feedback isn't public. */
export function FeedbackBody({ competition, entry }: FeedbackProps) {
  const { sheets = [], decision } = entry;
  return (
    <>
      <section>
        <h2>Scores</h2>
        <ScoreTable competition={competition} entry={entry} sheets={sheets} />
        <p>{spreadWords(sheets, competition.agreeWithin)}{decision === undefined ? null : <> <bdi>{decision}</bdi></>}</p>
      </section>
      <section>
        <h2>What the judges wrote</h2>
        {sheets.map((sheet) => <Comments key={sheet.judge} sheet={sheet} />)}
      </section>
    </>
  );
}

function spreadWords(sheets: readonly SheetReport[], agreeWithin: number): string {
  const totals = sheets.map(({ total }) => total);
  if (totals.length < 2) return "One judge's sheet is recorded.";
  const apart = Math.max(...totals) - Math.min(...totals);
  return apart <= agreeWithin
    ? `As first written down the judges were ${printedPoints(apart)} points apart.`
    : `As first written down the judges were ${printedPoints(apart)} points apart, more than the ${printedPoints(agreeWithin)} the competition allows, so they talked.`;
}

function ScoreTable({ competition, entry: { sections = [], score }, sheets }: FeedbackProps & { readonly sheets: readonly SheetReport[] }) {
  return (
    <WideTable label="Scores section by section">
      <table class="sections">
        <caption>Points as first written down</caption>
        <colgroup><col /><col />{sheets.map(({ judge }) => <col key={judge} />)}<col /></colgroup>
        <thead>
          <tr><th scope="col">Section</th><th scope="col" class="quantity">of</th>{sheets.map(({ judge }) => <th key={judge} scope="col" class="quantity"><bdi>{judge}</bdi></th>)}<th scope="col" class="quantity">Mean</th></tr>
        </thead>
        <tbody>
          {sections.map(({ section, mean, maximum }, index) => (
            <tr key={section}>
              <th scope="row"><bdi>{section}</bdi></th><td class="quantity">{printedPoints(maximum)}</td>
              {sheets.map((sheet) => <td key={sheet.judge} class="quantity">{printedPoints(sheet.sections[index]?.points ?? 0)}</td>)}
              <td class="quantity">{printedPoints(mean)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row"><b>All</b></th><td class="quantity">{printedPoints(competition.maximum)}</td>
            {sheets.map(({ judge, total }) => <td key={judge} class="quantity">{printedPoints(total)}</td>)}
            <td class="quantity">{printedPoints(sections.reduce((sum, { mean }) => sum + mean, 0))}</td>
          </tr>
          {score === undefined ? null : <tr><th scope="row"><b>Agreed</b></th><td class="quantity" /><td class="quantity" colspan={sheets.length + 1}><b>{printedPoints(score)}</b></td></tr>}
        </tbody>
      </table>
    </WideTable>
  );
}

function Comments({ sheet }: { readonly sheet: SheetReport }) {
  const told = sheet.sections.filter(({ comment }) => comment !== undefined);
  return (
    <>
      <h3>Judge <bdi>{sheet.judge}</bdi></h3>
      {told.length === 0 && sheet.comment === undefined ? <p>No comment is recorded.</p> : null}
      {told.length === 0 ? null : <dl class="comments">{told.map(({ section, comment }) => <div key={section}><dt><bdi>{section}</bdi></dt><dd dir="auto">{comment}</dd></div>)}</dl>}
      {sheet.comment === undefined ? null : <p dir="auto">{sheet.comment}</p>}
    </>
  );
}
