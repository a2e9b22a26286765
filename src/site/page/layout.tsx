import type { ComponentChildren } from "preact";
import { COMPETITION_LIST } from "../page-paths.js";
import { htmlText } from "./html-text.js";
import { PageContextProvider, useLink, usePage, type PageContext } from "./page-context.js";
import { pageData } from "./page-data.js";

/** The longest title a browser shows and search engines keep; html-validate warns beyond 70. */
const LONGEST_TITLE = 70;
const LONGEST_DESCRIPTION = 200;

/**
 * Unpacks the faces in fonts.css before the page is painted. Without it the page reads the same
 * in the browser's own serif: a face that comes late is left out, so that nothing moves.
 */
export const FACES_FIRST = 'if(document.fonts)for(const face of["1em","italic 1em","600 1em"])document.fonts.load(face+" \'Source Serif 4\'")';

export interface PageView {
  readonly title: string;
  readonly description: string;
  /** The club's name, the book's running head. */
  readonly club: string;
  /** Whether the running head leads to them. */
  readonly hasCompetitions: boolean;
  /** "sheet" for one printed page without the running head. */
  readonly kind?: "sheet";
  readonly scripts?: readonly string[];
  /** Absent where the site has no address yet. */
  readonly share?: ShareView;
  readonly content: ComponentChildren;
}

/** What other sites are told of a page that is linked to. */
export interface ShareView {
  /** The page's own address. */
  readonly page: string;
  /** Of a picture, 1200 × 630 px. */
  readonly card: string;
}

/** One whole page. The content is rendered by components that escape text by default. */
export function renderPage(page: PageContext, view: PageView): string {
  return htmlText(
    <PageContextProvider value={page}>
      <Document {...view} />
    </PageContextProvider>,
  );
}

/** Cuts at a word where it can; ends with an ellipsis when something was left out. */
export function shortened(text: string, longest: number): string {
  const letters = [...text.replaceAll(/\s+/gu, " ").trim()];
  if (letters.length <= longest) return letters.join("");
  const cut = letters.slice(0, longest - 1).join("");
  const space = cut.lastIndexOf(" ");
  return `${space > longest / 2 ? cut.slice(0, space) : cut}…`;
}

function Document({ title, description, club, hasCompetitions, kind, scripts = [], share, content }: PageView) {
  const link = useLink();
  const whole = title === club ? club : `${shortened(title, LONGEST_TITLE - 28)} · ${shortened(club, 25)}`;
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <title>{shortened(whole, LONGEST_TITLE)}</title>
        <meta name="description" content={shortened(description, LONGEST_DESCRIPTION)} />
        <link rel="stylesheet" href={link("assets/fonts.css")} />
        <script dangerouslySetInnerHTML={{ __html: FACES_FIRST }} />
        <link rel="stylesheet" href={link("assets/gylebook.css")} />
        <link rel="alternate" type="application/atom+xml" title={`New in ${shortened(club, 25)}`} href={link("feed.xml")} />
        {share === undefined ? null : <Share share={share} title={shortened(title, LONGEST_TITLE)} description={shortened(description, LONGEST_DESCRIPTION)} club={club} />}
        {scripts.map((script) => <script key={script} src={link(script)} defer />)}
      </head>
      <body class={kind === "sheet" ? "sheet-page" : "book"}>
        <a class="skip" href="#text">Skip to the text</a>
        <RunningHead club={club} hasCompetitions={hasCompetitions} />
        <main id="text" tabindex={-1}>{content}</main>
        {kind === "sheet" ? null : <Colophon club={club} />}
      </body>
    </html>
  );
}

/** As the Open Graph protocol names them (ogp.me), which most sites read. */
function Share({ share, title, description, club }: { readonly share: ShareView; readonly title: string; readonly description: string; readonly club: string }) {
  return (
    <>
      <link rel="canonical" href={share.page} />
      <meta property="og:type" content="article" />
      <meta property="og:site_name" content={club} />
      <meta property="og:title" content={title} />
      <meta property="og:description" content={description} />
      <meta property="og:url" content={share.page} />
      <meta property="og:image" content={share.card} />
      <meta property="og:image:width" content="1200" />
      <meta property="og:image:height" content="630" />
      <meta name="twitter:card" content="summary_large_image" />
    </>
  );
}

function RunningHead({ club, hasCompetitions }: { readonly club: string; readonly hasCompetitions: boolean }) {
  const link = useLink();
  return (
    <header class="running-head">
      <a class="book-title" href={link("index.html")}><bdi>{club}</bdi></a>
      <nav aria-label="The book">
        <ul>
          <li><a href={link("batches/index.html")}>Batches</a></li>
          <li><a href={link("index.html#seasons")}>Seasons</a></li>
          {hasCompetitions ? <li><a href={link(COMPETITION_LIST)}>Competitions</a></li> : null}
          <li><a href={link("index.html#hops")}>Hops</a></li>
          <li><a href={link("methods/index.html")}>Methods</a></li>
          <li><a href={link("search.html")}>Search</a></li>
        </ul>
      </nav>
    </header>
  );
}

function Colophon({ club }: { readonly club: string }) {
  const link = useLink();
  const data = pageData(usePage().path);
  return (
    <footer class="colophon">
      <p>
        The gyle book of <bdi>{club}</bdi>: written by its brewers, computed from what they measured.{" "}
        <a href={link("methods/index.html")}>How each number is worked out</a>.{" "}
        <a href={link("help/record.html")}>How to write a record</a>.{" "}
        {data === undefined ? null : <>This page’s data as <a href={link(data[0])}>JSON</a> and <a href={link(data[1])}>CSV</a>; </>}
        {data === undefined ? "All" : "all"} <a href={link("data/figures.csv")}>figures</a> of all batches and <a href={link("data/datapackage.json")}>what the columns mean</a>.
      </p>
    </footer>
  );
}
