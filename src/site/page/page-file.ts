import type { ComponentChildren } from "preact";
import { contentKey } from "../content-key.js";
import type { SiteFile } from "../site-file.js";
import { BOOK_CARD } from "../page-paths.js";
import { renderPage, type ShareView } from "./layout.js";
import type { PageContext } from "./page-context.js";
import type { Site } from "./site.js";
import { siteAddress } from "./site-address.js";
import { wordsFor } from "./use-words.js";

/** A page to be: what it says is rendered only when its key is new. */
export interface PagePlan {
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly kind?: "sheet";
  /** Path of the page's social card in the site; else the book's own. */
  readonly card?: string;
  /** Paths of scripts in the site that make the page handier; it can be read without. */
  readonly scripts?: readonly string[];
  /** Everything the content is made from, beside the club and the program's version. */
  readonly madeFrom: readonly unknown[];
  readonly content: () => ComponentChildren;
}

export function pageFile(site: Site, plan: PagePlan): SiteFile {
  const { inputs: { log, version }, methods } = site;
  const context: PageContext = { path: plan.path, units: log.club.units, methods };
  const { title, kind, card, scripts = [] } = plan;
  const hasCompetitions = log.competitions.length + log.coming.length > 0;
  const description = wordsFor(log.club.units, plan.description);
  return {
    path: plan.path,
    get key() {
      return contentKey(version, plan.path, log.club, title, description, card, scripts, hasCompetitions, ...plan.madeFrom);
    },
    render: () => renderPage(context, {
      title, description, club: log.club.name, hasCompetitions, scripts,
      ...(kind === undefined ? {} : { kind }),
      ...(log.club.url === undefined ? {} : { share: shareView(log.club.url, plan.path, card) }),
      content: plan.content(),
    }),
    ...(kind === "sheet" ? {} : { listed: { title, description } }),
  };
}

/** Addresses of a page where it is published. */
function shareView(url: string, path: string, card: string = BOOK_CARD): ShareView {
  return { page: siteAddress(url, path), card: siteAddress(url, card) };
}

/** A file of text that isn't a page. */
export function textFile(site: Site, path: string, madeFrom: readonly unknown[], render: () => string): SiteFile {
  return {
    path,
    get key() {
      return contentKey(site.inputs.version, path, ...madeFrom);
    },
    render,
  };
}
