import type { BatchReport } from "../../report/index.js";
import type { Methods } from "../method-view.js";

/** Where a measured figure of a batch is worked out: on its page, or else its method's page. */
export function workingPath(report: BatchReport, methods: Methods, id: string): string | undefined {
  if (report.working.some((working) => working.id === id)) return `batches/${report.slug}.html#working-${id}`;
  const figure = report.figures[id];
  return figure === undefined ? undefined : methodPath(methods, figure.method);
}

/** The page of a method, when there is one. */
export function methodPath(methods: Methods, id: string | undefined): string | undefined {
  return id !== undefined && methods.has(id) ? `methods/${id}.html` : undefined;
}
