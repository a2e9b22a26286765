import type { ComponentChildren } from "preact";
import { htmlText } from "./html-text.js";
import { PageContextProvider, useLink, type PageContext } from "./page-context.js";

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
  /** "sheet" for one printed page without the running head. */
  readonly kind?: "sheet";
  readonly content: ComponentChildren;
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

function Document({ title, description, club, kind, content }: PageView) {
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
      </head>
      <body class={kind === "sheet" ? "sheet-page" : "book"}>
        <a class="skip" href="#text">Skip to the text</a>
        <RunningHead club={club} />
        <main id="text" tabindex={-1}>{content}</main>
        {kind === "sheet" ? null : <Colophon club={club} />}
      </body>
    </html>
  );
}

function RunningHead({ club }: { readonly club: string }) {
  const link = useLink();
  return (
    <header class="running-head">
      <a class="book-title" href={link("index.html")}><bdi>{club}</bdi></a>
      <nav aria-label="The book">
        <ul>
          <li><a href={link("batches/index.html")}>Batches</a></li>
          <li><a href={link("index.html#seasons")}>Seasons</a></li>
          <li><a href={link("index.html#hops")}>Hops</a></li>
          <li><a href={link("methods/index.html")}>Methods</a></li>
        </ul>
      </nav>
    </header>
  );
}

function Colophon({ club }: { readonly club: string }) {
  const link = useLink();
  return (
    <footer class="colophon">
      <p>
        The gyle book of <bdi>{club}</bdi>: written by its brewers, computed from what they measured.{" "}
        <a href={link("methods/index.html")}>How each number is worked out</a>.{" "}
        <a href={link("help/record.html")}>How to write a record</a>.{" "}
        Data: <a href={link("data/batches.csv")}>batches</a>, <a href={link("data/figures.csv")}>figures</a>,{" "}
        <a href={link("data/datapackage.json")}>what the columns mean</a>.
      </p>
    </footer>
  );
}
