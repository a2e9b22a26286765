import type { ComponentChildren } from "preact";
import { contentKey } from "../content-key.js";
import type { SiteFile } from "../site-file.js";
import { renderPage } from "./layout.js";
import type { PageContext } from "./page-context.js";
import type { Site } from "./site.js";
import { wordsFor } from "./use-words.js";

/** A page to be: what it says is rendered only when its key is new. */
export interface PagePlan {
  readonly path: string;
  readonly title: string;
  readonly description: string;
  readonly kind?: "sheet";
  /** Everything the content is made from, beside the club and the program's version. */
  readonly madeFrom: readonly unknown[];
  readonly content: () => ComponentChildren;
}

export function pageFile(site: Site, plan: PagePlan): SiteFile {
  const { inputs: { log, version }, methods } = site;
  const context: PageContext = { path: plan.path, units: log.club.units, methods };
  return {
    path: plan.path,
    get key() {
      return contentKey(version, plan.path, log.club, plan.title, plan.description, ...plan.madeFrom);
    },
    render: () => renderPage(context, {
      title: plan.title, description: wordsFor(log.club.units, plan.description), club: log.club.name,
      ...(plan.kind === undefined ? {} : { kind: plan.kind }),
      content: plan.content(),
    }),
  };
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
