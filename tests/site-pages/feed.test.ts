import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { feedText } from "../../src/site/data/feed.js";
import { fullBatch } from "./sample-full.js";
import { minimalBatch, plannedBatch } from "./sample-report.js";

interface AtomLink { readonly "@_rel"?: string; readonly "@_href": string }
interface AtomEntry { readonly id: string; readonly title: { readonly "#text": string }; readonly updated: string; readonly link: AtomLink | AtomLink[]; readonly summary: { readonly "#text": string } }
interface Atom { readonly feed: { readonly id: string; readonly updated: string; readonly link: AtomLink[]; readonly entry: readonly AtomEntry[] } }

/** An independent parser of XML 1.0. */
function parsed(text: string): Atom["feed"] {
  expect(XMLValidator.validate(text)).toBe(true);
  return (new XMLParser({ ignoreAttributes: false, isArray: (name) => name === "entry" }).parse(text) as Atom).feed;
}

const club = { name: "Saltings Homebrewers", url: "https://example.org/beer", units: "metric" as const };
const linkOf = ({ link }: AtomEntry): string => [link].flat()[0]!["@_href"];

describe("feed.xml", () => {
  const feed = parsed(feedText(club, [plannedBatch, fullBatch, minimalBatch]));

  it("has each brewed batch and each dated tasting, newest first, and no plan", () => {
    const dates = feed.entry.map(({ updated }) => updated);
    expect(dates).toEqual(dates.toSorted().reverse());
    const titles = feed.entry.map(({ title }) => title["#text"]);
    expect(titles.filter((title) => title.startsWith("TP-03 tasted"))).toHaveLength(fullBatch.tastings.filter(({ date }) => date !== undefined).length);
    expect(titles.some((title) => title.startsWith("TP-03: "))).toBe(true);
    expect(titles.join()).not.toContain(plannedBatch.batch);
  });

  // RFC 4287: 4.1.1 and 4.1.2 ask for id, title and updated; 4.2.6 for ids that are IRIs and never change; 3.3 for RFC 3339 dates.
  it("gives every entry an id of its own, a title, and a date as RFC 3339 writes it", () => {
    const ids = [feed.id, ...feed.entry.map(({ id }) => id)];
    expect(new Set(ids).size).toBe(ids.length);
    // RFC 9562, 4: version 5 and variant 10 in their places.
    for (const id of ids) expect(id).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/u);
    for (const { updated } of feed.entry) expect(new Date(updated).toISOString()).toBe(updated);
    expect(feed.updated).toBe(feed.entry[0]?.updated);
  });

  it("links to pages under the club's address, with or without a slash at its end", () => {
    expect(feed.link.find((link) => link["@_rel"] === "self")?.["@_href"]).toBe("https://example.org/beer/feed.xml");
    expect(feed.entry.map(linkOf)).toContain("https://example.org/beer/batches/tp-03.html");
    expect(feed.entry.map(linkOf)).toContain("https://example.org/beer/batches/tp-03.html#tasting-1");
  });

  it("links relative to itself where the club has no address yet, and keeps its ids when it gets one", () => {
    const homeless = parsed(feedText({ name: club.name, units: "metric" }, [fullBatch]));
    expect(homeless.entry.map(linkOf)).toContain("batches/tp-03.html");
    expect(homeless.entry.map(({ id }) => id)).toEqual(parsed(feedText(club, [fullBatch])).entry.map(({ id }) => id));
    expect(JSON.stringify(homeless)).not.toContain("invalid");
  });

  it("comes from the records alone: the same on any day", () => {
    expect(feedText(club, [fullBatch])).toBe(feedText(club, [fullBatch]));
    expect(feedText(club, [])).toContain("1970-01-01");
  });

  it("shows a stranger's text as text: no markup, no way out of its element, nothing XML can't hold", () => {
    const hostile = { ...fullBatch, title: "<img src=x onerror=alert(1)> ]]> & \u0007bell", brewer: "a<b>&\u0001" };
    const [entry] = parsed(feedText(club, [{ ...hostile, tastings: [] }])).entry;
    // What a reader gets is HTML (type="html"): its text is the title as written.
    expect(entry?.title["#text"]).toBe("TP-03: &lt;img src=x onerror=alert(1)&gt; ]]&gt; &amp; bell");
  });
});
