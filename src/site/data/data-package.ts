import { FIGURE_TABLE, type LogReport } from "../../report/index.js";
import type { FermentationLogView } from "../site-inputs.js";
import type { MethodView } from "../method-view.js";
import { BATCH_COLUMNS, FIGURE_COLUMNS } from "./batch-tables.js";
import type { DataColumn } from "./data-column.js";

/** What the descriptor needs of each file beside it. */
export interface DataFile {
  readonly path: string;
  readonly sha256: string;
  readonly bytes: number;
}

/**
 * A data package descriptor (Data Package standard, version 2.0, Open Knowledge
 * Foundation, 2024: profile, resources, table schema) whose fields carry units
 * and whose figures name their methods.
 */
export function dataPackage(log: LogReport, methods: readonly MethodView[], files: readonly DataFile[], logs: readonly FermentationLogView[]): string {
  const descriptor = {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name: "gyle-book",
    title: `The gyle book of ${log.club.name}`,
    description: `Everything computed for the published batches, as of ${log.club.asOf}`,
    resources: [
      resource("batches", "batches.csv", BATCH_COLUMNS, files),
      resource("figures", "figures.csv", FIGURE_COLUMNS, files),
      ...logs.map(({ slug, sha256 }) => ({
        name: `fermentation-${slug}`, path: `fermentation/${slug}.csv`, format: "csv", mediatype: "text/csv", hash: `sha256:${sha256}`,
        description: "The fermentation log as it was recorded, byte for byte",
      })),
    ],
    figures: FIGURE_TABLE.map(({ id, title, unit, meaning }) => ({ id, title, unit, meaning, methods: methodsUsed(log, id) })),
    methods: methods.map(({ id, title, source, status }) => ({ id, title, source, status, path: `../methods/${id}.html` })),
  };
  return `${JSON.stringify(descriptor, null, 1)}\n`;
}

function resource<Row>(name: string, path: string, columns: readonly DataColumn<Row>[], files: readonly DataFile[]): object {
  const file = files.find((known) => known.path === path);
  return {
    name, path, type: "table", format: "csv", mediatype: "text/csv", encoding: "utf-8",
    ...(file === undefined ? {} : { hash: `sha256:${file.sha256}`, bytes: file.bytes }),
    schema: {
      $schema: "https://datapackage.org/profiles/2.0/tableschema.json",
      fields: columns.map(({ value: _, ...field }) => field),
      missingValues: [""],
    },
  };
}

/** The methods that gave this figure in this log, each once. */
function methodsUsed(log: LogReport, id: string): string[] {
  const used = log.batches.flatMap((batch) => [batch.figures[id]?.method, batch.planned[id]?.method]);
  return [...new Set(used.filter((method) => method !== undefined))].toSorted();
}
