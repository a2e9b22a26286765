import type { ComponentChildren } from "preact";
import type { BatchReport } from "../../report/index.js";
import { contentKey } from "../content-key.js";
import type { MethodView, SiteFile, SiteInputs } from "../site-inputs.js";
import { workingPath } from "../views/figure-rows.js";
import { renderPage } from "./layout.js";
import type { PageContext } from "./page-context.js";

/** The inputs with what every page looks up in them, looked up once. */
export interface Site {
  readonly inputs: SiteInputs;
  readonly methods: ReadonlyMap<string, MethodView>;
  readonly batches: ReadonlyMap<string, BatchReport>;
}

export function indexSite(inputs: SiteInputs): Site {
  return {
    inputs,
    methods: new Map(inputs.methods.map((method) => [method.id, method])),
    batches: new Map(inputs.log.batches.map((batch) => [batch.slug, batch])),
  };
}

/** Where a figure of a batch is worked out, for pages that list several batches. */
export function workingIn(site: Site): (slug: string, figure: string) => string | undefined {
  return (slug, figure) => {
    const batch = site.batches.get(slug);
    return batch === undefined ? undefined : workingPath(batch, site.methods, figure);
  };
}

/** What a page that links to workings is also made from: which of them there are. */
export function workingsKnown(site: Site): readonly unknown[] {
  return site.inputs.log.batches.map(({ slug, working }) => [slug, working.map(({ id }) => id)]);
}

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
    key: contentKey(version, plan.path, log.club, plan.title, plan.description, ...plan.madeFrom),
    render: () => renderPage(context, {
      title: plan.title, description: plan.description, club: log.club.name,
      ...(plan.kind === undefined ? {} : { kind: plan.kind }),
      content: plan.content(),
    }),
  };
}

/** A file of text that isn't a page. */
export function textFile(site: Site, path: string, madeFrom: readonly unknown[], render: () => string): SiteFile {
  return { path, key: contentKey(site.inputs.version, path, ...madeFrom), render };
}
