import { Feed } from "feed";
import type { BatchReport, ClubReport, TastingReport } from "../../report/index.js";
import { batchPage } from "../page-paths.js";
import { textFile } from "../page/page-file.js";
import { siteAddress } from "../page/site-address.js";
import { wordsFor } from "../page/use-words.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";
import { nameId } from "./name-id.js";

/** Readers show the newest; the list has all. */
const MOST_ENTRIES = 60;

type FeedClub = Pick<ClubReport, "name" | "url" | "units">;

interface Entry {
  readonly id: string;
  readonly title: string;
  /** Path inside the site. */
  readonly page: string;
  /** Civil date. */
  readonly date: string;
  readonly says: string;
  readonly author?: string;
}

/** What is new, to follow: each batch on the day it was brewed, each tasting on its own (Atom, RFC 4287). */
export function feedFiles(site: Site): SiteFile[] {
  const { club, batches } = site.inputs.log;
  const madeFrom = batches.map(({ slug, batch, title, brewed, brewer, status, summary, tastings }) =>
    [slug, batch, title, brewed, brewer, status, summary, tastings.map(({ name, date, says }) => [name, date, says])]);
  return [textFile(site, "feed.xml", [club.name, club.url, club.units, madeFrom], () => feedText(club, batches))];
}

/**
 * Dates and ids come from the records, never from a clock: a rebuild changes nothing, and the ids stay
 * when the site moves. Without an address the links are relative to the feed, as RFC 4287 allows.
 */
export function feedText(club: FeedClub, batches: readonly BatchReport[]): string {
  const entries = batches.filter(({ status }) => status !== "planned").flatMap((batch) => entriesOf(club, batch))
    .toSorted((one, other) => (one.date === other.date ? one.id.localeCompare(other.id, "en") : other.date.localeCompare(one.date, "en")))
    .slice(0, MOST_ENTRIES);
  const address = (path: string): string => siteAddress(club.url ?? NOWHERE, path);
  const feed = new Feed({
    id: nameId(club.name), title: withoutControls(club.name), description: asHtml(`Batches and tastings of ${club.name}`), generator: "gylebook",
    link: address("index.html"), feedLinks: { atom: address("feed.xml") }, author: { name: withoutControls(club.name) },
    updated: instantOf(entries[0]?.date ?? EARLIEST),
  });
  for (const { id, title, page, date, says, author } of entries) {
    feed.addItem({
      id, title: asHtml(title), link: address(page), date: instantOf(date), published: instantOf(date), description: asHtml(says),
      ...(author === undefined ? {} : { author: [{ name: withoutControls(author) }] }),
    });
  }
  return `${feed.atom1().replaceAll(`"${NOWHERE}`, '"')}\n`;
}

/** The library wants whole addresses: this one, which leads nowhere (RFC 2606), is taken out again where the club has none. */
const NOWHERE = "https://relative.invalid/";

/** What an empty feed was updated on: it must say something, and no clock may. */
const EARLIEST = "1970-01-01";

function entriesOf(club: FeedClub, report: BatchReport): Entry[] {
  const { slug, batch, title, brewed, brewer, summary, tastings } = report;
  const page = `${batchPage(slug)}.html`;
  const author = brewer === undefined ? {} : { author: brewer };
  return [
    { id: nameId(club.name, batch), title: `${batch}: ${title}`, page, date: brewed.slice(0, 10), says: said(club, summary, `${batch} was brewed.`), ...author },
    ...tastings.flatMap((tasting, index) => tasting.date === undefined ? [] : [tastingEntry(club, report, tasting, tasting.date, `${page}#tasting-${index + 1}`)]),
  ];
}

function tastingEntry(club: FeedClub, { batch, title }: BatchReport, { name, says }: TastingReport, date: string, page: string): Entry {
  return {
    id: nameId(club.name, batch, "tasting", name, date), title: `${batch} tasted: ${name}`, page, date: date.slice(0, 10), says: said(club, says.join(" "), `${title} was tasted.`),
  };
}

/** Readers take titles and summaries for HTML, so a stranger's text goes in as HTML that shows it as it is. */
function asHtml(text: string): string {
  return withoutControls(text).replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** XML 1.0 has no way to write control characters. */
function withoutControls(text: string): string {
  return text.replaceAll(/[^\P{Cc}\n\t]/gu, "");
}

function said({ units }: FeedClub, words: string, otherwise: string): string {
  const text = wordsFor(units, words).trim();
  return text === "" ? otherwise : text;
}

/** A civil date has no zone: its midnight in UTC stands for the day. */
function instantOf(date: string): Date {
  return new Date(`${date}T00:00:00Z`);
}
