import type { CandidateReport, ComingReport, LogReport } from "../../report/index.js";
import { StyleVerdicts } from "../components/style-verdicts.js";
import { COMPETITION_LIST, competitionPage } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";

/** Competitions with results, and for those to come which batch to enter. Of one in between it says nothing. */
export function competitionListFiles(site: Site): SiteFile[] {
  const { log } = site.inputs;
  if (log.competitions.length === 0 && log.coming.length === 0) return [];
  return [pageFile(site, {
    path: COMPETITION_LIST, title: "Competitions", description: "Results that are out, and which batch to enter next.",
    madeFrom: [log.competitions.map(({ slug, name, date, says }) => ({ slug, name, date, says })), log.coming],
    content: () => <Competitions log={log} />,
  })];
}

function Competitions({ log }: { readonly log: LogReport }) {
  return (
    <>
      <header class="opening"><h1>Competitions</h1></header>
      {log.coming.map((coming) => <Coming key={coming.slug} coming={coming} />)}
      <Results log={log} />
    </>
  );
}

function Results({ log: { competitions } }: { readonly log: LogReport }) {
  const link = useLink();
  if (competitions.length === 0) return null;
  return (
    <section id="results">
      <h2>Results</h2>
      <ul class="entries">
        {competitions.map(({ slug, name, date, says }) => (
          <li key={slug}>
            <p class="entry-title"><a href={link(`${competitionPage(slug)}.html`)}><bdi>{name}</bdi></a></p>
            <p class="overline">{printedDate(date)}</p>
            <p>{says}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Coming({ coming: { name, slug, date, brewers } }: { readonly coming: ComingReport }) {
  return (
    <section id={`coming-${slug}`} class="full">
      <h2>Which batch to enter: <bdi>{name}</bdi>, {printedDate(date)}</h2>
      <div class="text-measure">
        <p>
          Each brewer’s batches that will be in a package on the day. Their order follows three things, one after the other, and adds nothing up: fewest figures outside the style, counting
          what the readings and relations can be off by; then whether tasters found what the beer was brewed for; then freshness. Each row says what decided. Whether there is any left isn’t
          recorded: taste before entering.
        </p>
      </div>
      {brewers.length === 0 ? <p>No batch is packaged in time.</p> : brewers.map(({ brewer, candidates }) => <Brewer key={brewer} brewer={brewer} candidates={candidates} />)}
    </section>
  );
}

function Brewer({ brewer, candidates }: ComingReport["brewers"][number]) {
  return (
    <table class="candidates stack">
      <caption><bdi>{brewer}</bdi></caption>
      <thead><tr><th scope="col">Batch</th><th scope="col">Against the style</th><th scope="col">On the day</th><th scope="col">What tasters found, earlier results</th></tr></thead>
      <tbody>{candidates.map((candidate) => <Candidate key={candidate.slug} candidate={candidate} />)}</tbody>
    </table>
  );
}

function Candidate({ candidate }: { readonly candidate: CandidateReport }) {
  const link = useLink();
  const { batch, slug, title, style, styleRows, daysOld, packaged, tasters, earlier, entered, why } = candidate;
  return (
    <tr>
      <th scope="row">
        <a href={link(`batches/${slug}.html`)}><b><bdi>{batch}</bdi></b> <bdi>{title}</bdi></a>
        <span class="row-note">{why}{entered ? <> <a href={link(`batches/${slug}-entry.html`)}>Entry notes</a> are made for it.</> : null}</span>
      </th>
      <td data-head="Against the style">{style === undefined ? "No style is recorded." : <StyleVerdicts style={style} rows={styleRows} />}</td>
      <td data-head="On the day"><span class="number">{daysOld}</span> days in the package<span class="row-note">since {packaged === undefined ? null : printedDate(packaged.slice(0, 10))}</span></td>
      <td data-head="What tasters found, earlier results">{tasters}{earlier.map((result) => <span key={result} class="row-note">{result}</span>)}</td>
    </tr>
  );
}
