import type { BatchReport, LogReport, NextStep } from "../../report/index.js";
import { MarginNote } from "../components/caution.js";
import { Figure } from "../components/figure.js";
import { Plate } from "../components/plate.js";
import { Swatch } from "../components/swatch.js";
import { shortened } from "../page/layout.js";
import { COMPETITION_LIST, competitionPage } from "../page-paths.js";
import { useLink, usePage } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import { type Site, workingsKnown } from "../page/site.js";
import { useWords } from "../page/use-words.js";
import { reportKey } from "../report-key.js";
import type { SiteFile } from "../site-file.js";
import { printedDate, shortDate } from "../text/printed-date.js";
import { lowerFirst } from "../text/printed-words.js";
import { figureRows } from "../views/figure-rows.js";
import { clubInOneSentence, isOpen } from "../views/club-sentence.js";

const NEWEST = 4;
/** A season's own page tells it whole. */
const LONGEST_SUMMARY = 240;
const PACKAGED = new Set(["packaged", "dumped"]);

/** What is in the fermenter and what it needs, what is new, and the way to everything else. */
export function homeFiles(site: Site): SiteFile[] {
  const { log } = site.inputs;
  return [pageFile(site, {
    path: "index.html",
    title: log.club.name,
    description: clubInOneSentence(log),
    madeFrom: [log.batches.map(reportKey),
      log.seasons.map(({ slug, season, summary }) => ({ slug, season, summary })), log.series, log.hops, log.leftOut,
      log.competitions.map(({ slug, name, date, says }) => ({ slug, name, date, says })), log.coming.map(({ slug, name, date }) => ({ slug, name, date })), workingsKnown(site)],
    content: () => <Home log={log} />,
  })];
}

function Home({ log }: { readonly log: LogReport }) {
  const link = useLink();
  const open = log.batches.filter(isOpen);
  const done = log.batches.filter(({ status }) => PACKAGED.has(status)).toSorted((one, other) => (newsOf(one).date < newsOf(other).date ? 1 : -1));
  const planned = log.batches.filter(({ status }) => status === "planned");
  return (
    <>
      <header class="opening home-opening">
        <h1><bdi>{log.club.name}</bdi></h1>
        <p class="lead">{clubInOneSentence(log)}</p>
        <NewInBrief newest={done[0]} open={open} />
        <Plate batches={log.batches} />
        <MarginNote>
          <p>A gyle is one brewing. This is the book in which each is written down: what was meant, what was done, what was measured, and what people who didn’t know which glass was which made of it.</p>
          <p><a href={link("search.html")}>Search it</a>, see <a href={link("batches/index.html")}>all {log.batches.length} batches</a>, or follow it as a <a href={link("feed.xml")}>feed</a>.</p>
        </MarginNote>
      </header>
      {open.length === 0 ? null : <section><h2>In the fermenter now</h2><Entries batches={open} /></section>}
      {done.length === 0 ? null : <Newest batches={done} all={log.batches.length} />}
      {planned.length === 0 ? null : <section><h2>Planned</h2><Entries batches={planned} /></section>}
      <Calendar batches={log.batches} />
      <Seasons log={log} />
      <Competitions log={log} />
      <Lists log={log} />
      <LeftOut log={log} />
    </>
  );
}

/** What is new, before anything has to be read. */
function NewInBrief({ newest, open }: { readonly newest: BatchReport | undefined; readonly open: readonly BatchReport[] }) {
  return (
    <>
      {newest === undefined ? null : <p class="in-brief"><i>Newest:</i> <BatchLink batch={newest} />, {newsOf(newest).did} {printedDate(newsOf(newest).date)}.</p>}
      {open.length === 0 ? null : (
        <p class="in-brief"><i>In the fermenter:</i>{" "}{open.map((batch, index) => <span key={batch.slug}>{index === 0 ? null : "; "}<BatchLink batch={batch} />, {batch.status}</span>)}.</p>
      )}
    </>
  );
}

function BatchLink({ batch: { slug, batch, title } }: { readonly batch: BatchReport }) {
  const link = useLink();
  return <a href={link(`batches/${slug}.html`)}><bdi>{batch}</bdi> <bdi>{title}</bdi></a>;
}

/** The last thing that happened to a batch, and when: a civil date. */
function newsOf({ brewed, packaged, status, tastings }: BatchReport): { readonly did: string; readonly date: string } {
  const tasted = tastings.flatMap(({ date }) => date ?? []).toSorted().at(-1);
  const end = packaged === undefined ? { did: status === "dumped" ? "dumped, brewed" : "brewed", date: brewed.slice(0, 10) } : { did: "packaged", date: packaged.slice(0, 10) };
  return tasted !== undefined && tasted.slice(0, 10) >= end.date ? { did: "tasted", date: tasted.slice(0, 10) } : end;
}

function Calendar({ batches }: { readonly batches: readonly BatchReport[] }) {
  const link = useLink();
  return batches.some(({ next }) => next.length > 0) ? <p class="after-entries">All of these steps as a <a href={link("calendar.ics")}>calendar</a>, to keep or to subscribe to.</p> : null;
}

function Newest({ batches, all }: { readonly batches: readonly BatchReport[]; readonly all: number }) {
  const link = useLink();
  return (
    <section>
      <h2>New in the book</h2>
      <Entries batches={batches.slice(0, NEWEST)} />
      <p class="after-entries"><a href={link("batches/index.html")}>All {all} batches</a></p>
    </section>
  );
}

/** Batches as entries of a catalogue: a line of facts, then words. */
function Entries({ batches }: { readonly batches: readonly BatchReport[] }) {
  const words = useWords();
  return (
    <ul class="entries">
      {batches.map((batch) => (
        <li key={batch.slug}>
          <p class="entry-title"><BatchLink batch={batch} /></p>
          <p class="overline"><Dates batch={batch} /></p>
          {batch.summary === "" ? null : <p>{words(withoutNext(batch.summary))}</p>}
          <NextLine steps={batch.next} />
          <Facts batch={batch} />
        </li>
      ))}
    </ul>
  );
}

/** The line below says what is next, and all of it. */
function withoutNext(summary: string): string {
  return summary.replace(/\s*Next: [^.]*\.$/u, "");
}

function Dates({ batch }: { readonly batch: BatchReport }) {
  const { did, date } = newsOf(batch);
  const isDone = PACKAGED.has(batch.status) && did !== "brewed" && batch.status !== "dumped";
  return (
    <>
      {batch.status === "planned" ? "To be brewed" : "Brewed"} {printedDate(batch.brewed)}{batch.brewer === undefined ? null : <> by <bdi>{batch.brewer}</bdi></>}, {isDone ? `${did} ${printedDate(date)}` : batch.status}
    </>
  );
}

/** What an open batch needs, in one line; why a step is held back is told on its page. */
function NextLine({ steps }: { readonly steps: readonly NextStep[] }) {
  if (steps.length === 0) return null;
  return (
    <p class="next-line">
      <i>Next:</i>{" "}
      {steps.map(({ id, step, when, state }, index) => (
        <span key={`${id} ${when}`}>{index === 0 ? step : `; ${lowerFirst(step)}`} {shortDate(when)}{state === "overdue" ? <b> (overdue)</b> : state === "blocked" ? <b> (held back)</b> : null}</span>
      ))}.
    </p>
  );
}

const FACTS = ["abv", "bitterness", "dry-hop-dose"] as const;

/** What a drinker asks first, in the margin beside the words. */
function Facts({ batch }: { readonly batch: BatchReport }) {
  const { methods } = usePage();
  const rows = figureRows(batch, methods, new Set(FACTS)).filter((row) => row.measured ?? row.planned);
  if (rows.length === 0 && batch.style === undefined) return null;
  return (
    <div class="margin">
      <Swatch swatch={batch.swatch} />
      {batch.style === undefined ? null : <><bdi>{batch.style}</bdi>. </>}
      {rows.map(({ id, title, measured, planned, working, plannedWorking }) => (
        <span key={id} class="row-line">
          {title}{" "}
          {measured !== undefined ? <Figure {...measured} brief saysBasis working={working} /> : null}
          {measured === undefined && planned !== undefined ? <Figure {...planned} brief basis="planned" saysBasis working={plannedWorking} /> : null}
        </span>
      ))}
    </div>
  );
}

function Seasons({ log }: { readonly log: LogReport }) {
  const words = useWords();
  const link = useLink();
  return (
    <section id="seasons">
      <h2>Seasons</h2>
      {log.seasons.length === 0 ? <p>No batch names a <code>season</code> yet; those that share one get a page of trends.</p> : (
        <ul class="entries">
          {log.seasons.map(({ slug, season, summary }) => (
            <li key={slug}>
              <p class="entry-title"><a href={link(`seasons/${slug}.html`)}><bdi>{season}</bdi></a></p>
              <p>{words(shortened(summary, LONGEST_SUMMARY))}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Competitions({ log }: { readonly log: LogReport }) {
  const link = useLink();
  if (log.competitions.length === 0 && log.coming.length === 0) return null;
  return (
    <section id="competitions">
      <h2>Competitions</h2>
      <ul class="entries">
        {log.competitions.map(({ slug, name, date, says }) => (
          <li key={slug}>
            <p class="entry-title"><a href={link(`${competitionPage(slug)}.html`)}><bdi>{name}</bdi></a></p>
            <p class="overline">{printedDate(date)}</p>
            <p>{says}</p>
          </li>
        ))}
      </ul>
      {log.coming.map(({ slug, name, date }) => <p key={slug}><a href={link(`${COMPETITION_LIST}#coming-${slug}`)}>Which batch to enter</a> for the <bdi>{name}</bdi>, {printedDate(date)}.</p>)}
    </section>
  );
}

function Lists({ log }: { readonly log: LogReport }) {
  return (
    <>
      <section id="series"><h2>Series</h2>
        {log.series.length === 0 ? <p>No batch names a <code>series</code> yet; versions of one beer that share one are told side by side.</p> : <RunIn folder="series" entries={log.series} />}
      </section>
      <section id="hops"><h2>Hops</h2>
        {log.hops.length === 0 ? <p>No hop is recorded yet.</p> : <RunIn folder="hops" entries={log.hops} />}
      </section>
    </>
  );
}

interface RunInProps {
  readonly folder: string;
  readonly entries: readonly { readonly name: string; readonly slug: string; readonly batches: readonly string[] }[];
}

/** An index set run-in, as at the back of a book: name and how many batches. */
function RunIn({ folder, entries }: RunInProps) {
  const link = useLink();
  return (
    <ul class="run-in">
      {entries.map(({ name, slug, batches }) => (
        <li key={slug}><a href={link(`${folder}/${slug}.html`)}><bdi>{name}</bdi></a> {batches.length === 1 ? "1 batch" : `${batches.length} batches`}</li>
      ))}
    </ul>
  );
}

function LeftOut({ log }: { readonly log: LogReport }) {
  if (log.leftOut.length === 0) return null;
  return (
    <section>
      <h2>Left out</h2>
      <p>These records have mistakes in them, so this build left them out.</p>
      <ul>{log.leftOut.map(({ file, why }) => <li key={file}><code>{file}</code>: {why}</li>)}</ul>
    </section>
  );
}
