import type { CompetitionReport } from "../../report/index.js";
import { contentKey } from "../content-key.js";
import { EntryName } from "../components/entry-name.js";
import { Probability } from "../components/figure.js";
import { Lead } from "../components/lead.js";
import { RawMarkup } from "../components/raw-markup.js";
import { competitionPage, feedbackPath } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { pageFile, textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { SeverityPart } from "../parts/agreement-part.js";
import { entriesOf, flightId, FlightPart } from "../parts/flight-part.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";
import { printedPlace, printedPoints } from "../text/printed-points.js";
import { renderMarkdown } from "../text/safe-markdown.js";
import { feedbackPage } from "./feedback-page.js";

/** Results of the competitions that are released: a page and its JSON each, and the entries' own pages where scores are public. */
export function competitionFiles(site: Site): SiteFile[] {
  return site.inputs.log.competitions.flatMap((competition) => {
    const page = competitionPage(competition.slug);
    const key = competitionKey(competition);
    return [
      pageFile(site, {
        path: `${page}.html`, title: competition.name, description: competition.says, madeFrom: [key],
        content: () => <Competition competition={competition} />,
      }),
      textFile(site, `${page}.json`, [key], () => `${JSON.stringify(competition, null, 1)}\n`),
      ...competition.entries.flatMap((entry) => (feedbackPath(competition.slug, entry) === undefined ? [] : [feedbackPage(site, competition, entry)])),
    ];
  });
}

const keys = new WeakMap<CompetitionReport, string>();

function competitionKey(competition: CompetitionReport): string {
  const key = keys.get(competition) ?? contentKey(competition);
  keys.set(competition, key);
  return key;
}

function Competition({ competition }: { readonly competition: CompetitionReport }) {
  const link = useLink();
  const { name, slug, date, released, says, notes, flights, severity } = competition;
  return (
    <>
      <header class="opening">
        <p class="overline">Competition, held {printedDate(date)}, results released {printedDate(released)}</p>
        <h1><bdi>{name}</bdi></h1>
        <Lead text={says} />
        <p><a href={link(`${competitionPage(slug)}.json`)}>The results as JSON</a></p>
      </header>
      <FlightList flights={flights} />
      <BestOfShow competition={competition} />
      {flights.map((flight) => <FlightPart key={flight.flight} competition={competition} flight={flight} />)}
      {severity === undefined ? null : <SeverityPart severity={severity} />}
      {notes.trim() === "" ? null : (
        <section id="notes">
          <h2>The day</h2>
          <RawMarkup class="notes" markup={renderMarkdown(notes, { under: 2, photo: () => undefined, page: () => undefined, link })} />
        </section>
      )}
      <HowJudged competition={competition} />
    </>
  );
}

/** Fewer flights are seen at a glance. */
const LISTED_FROM = 4;

/** The way to each flight, where there are many. */
function FlightList({ flights }: Pick<CompetitionReport, "flights">) {
  if (flights.length < LISTED_FROM) return null;
  return (
    <nav class="screen-only" aria-label="Flights">
      <p>
        {flights.length} flights:{" "}
        {flights.map(({ flight }, index) => <span key={flight}>{index === 0 ? "" : ", "}<a href={`#${flightId(flight)}`}><bdi>{flight}</bdi></a></span>)}.
      </p>
    </nav>
  );
}

function BestOfShow({ competition }: { readonly competition: CompetitionReport }) {
  const { bestOfShow } = competition;
  if (bestOfShow === undefined) return null;
  const { entries, ranks = [], says, decision, concordance } = bestOfShow;
  return (
    <section id="best-of-show">
      <h2>Best of show</h2>
      <table class="places stack">
        <caption>Best of show</caption>
        <thead><tr><th scope="col">Place</th><th scope="col">Entry</th>{ranks.length === 0 ? null : <th scope="col">Ranks given</th>}</tr></thead>
        <tbody>
          {entriesOf(competition, entries).map((entry) => (
            <tr key={entry.entry}>
              <td data-head="Place">{entry.bestOfShow === undefined ? "–" : printedPlace(entry.bestOfShow)}</td>
              <th scope="row"><EntryName entry={entry} competition={competition.slug} /></th>
              {ranks.length === 0 ? null : <td data-head="Ranks given">{ranksOf(entry.entry, ranks)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
      <p>{says}{decision === undefined ? null : <> <bdi>{decision}</bdi></>}{concordance === undefined ? null : <> Kendall’s W of the ranks: <span class="number">{concordance.w.toFixed(2)}</span>, at random <span class="number">{concordance.chance.toFixed(2)}</span> on average, p <Probability p={concordance.p} />.</>}</p>
    </section>
  );
}

type Ranks = NonNullable<NonNullable<CompetitionReport["bestOfShow"]>["ranks"]>;

function ranksOf(id: string, ranks: Ranks): string {
  return (ranks.find(({ entry }) => entry === id)?.ranks ?? []).map(({ judge, rank }) => `${judge} ${printedPlace({ place: rank })}`).join(", ");
}

/** What was done, and which of it is whose practice. */
function HowJudged({ competition: { sheet, maximum, agreeWithin, feedback, handles } }: { readonly competition: CompetitionReport }) {
  return (
    <section id="how">
      <h2>How it was judged</h2>
      <p>
        Each judge wrote a sheet of {sheet.map(({ section, maximum: most }) => `${section} ${printedPoints(most)}`).join(", ")}, {printedPoints(maximum)} points in all, without talking;
        then those at a table who were more than {printedPoints(agreeWithin)} points apart talked, and all agreed on one score. A sheet of 50 points in these five sections and an agreement
        within seven points are published practice of homebrew competitions (judge procedures and score sheets of the trade’s association); what this club used is what stands here.
      </p>
      <p>
        Places follow the agreed scores; equal scores share a place unless a decision between them is recorded. What is said of agreement and of how firmly the order stands rests on the
        scores as first written down, since agreed scores are not independent of each other. An intraclass correlation of 1 means that judges agree to the point, 0 that a score says no more of
        the entry than chance. It is for the club to learn from: no place, score or medal was changed by it.
      </p>
      <p>
        {feedback === "public" ? "Scores and comments are public." : "Scores and comments go to those who entered, not on this page."}
        {handles === "shown" ? "" : " Brewers are not named."} Judges are named by code. Blind codes are not published.
      </p>
    </section>
  );
}
