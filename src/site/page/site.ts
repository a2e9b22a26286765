import type { BatchReport } from "../../report/index.js";
import type { MethodView } from "../method-view.js";
import type { SiteInputs } from "../site-inputs.js";
import { workingPath } from "../views/working-path.js";

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
