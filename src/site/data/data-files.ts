import { createHash } from "node:crypto";
import { textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";
import { batchesCsv, figuresCsv } from "./batch-tables.js";
import { dataPackage, type DataFile } from "./data-package.js";

/** The log as data: tables, what their columns mean, and checksums. */
export function dataFiles(site: Site): SiteFile[] {
  const { log, methods, logs = [] } = site.inputs;
  const madeFrom = [log.batches.map(({ slug, brewer, season, series, style, status, figures, planned, dryHops, title, brewed }) =>
    ({ slug, brewer, season, series, style, status, figures, planned, dryHops, title, brewed }))];
  const batches = (): string => batchesCsv(log.batches);
  const figures = (): string => figuresCsv(log.batches);
  const tables = (): DataFile[] => [measuredFile("batches.csv", batches()), measuredFile("figures.csv", figures())];
  const describe = (): string => dataPackage(log, methods, tables(), logs);
  const sums = (): string => checksums([...tables(), measuredFile("datapackage.json", describe()), ...logs.map(({ slug, sha256 }) => ({ path: `fermentation/${slug}.csv`, sha256 }))]);
  const logKeys = logs.map(({ slug, sha256 }) => [slug, sha256]);
  return [
    textFile(site, "data/batches.csv", madeFrom, batches),
    textFile(site, "data/figures.csv", madeFrom, figures),
    textFile(site, "data/datapackage.json", [madeFrom, log.club, logKeys], describe),
    textFile(site, "data/checksums.txt", [madeFrom, log.club, logKeys], sums),
    ...logs.map(({ slug, text, sha256 }) => textFile(site, `data/fermentation/${slug}.csv`, [sha256], () => text)),
  ];
}

function measuredFile(path: string, text: string): DataFile {
  return { path, sha256: createHash("sha256").update(text).digest("hex"), bytes: Buffer.byteLength(text) };
}

/** One line a file, as `sha256sum --check` reads them. */
function checksums(files: readonly { readonly path: string; readonly sha256: string }[]): string {
  return files.map(({ path, sha256 }) => `${sha256}  ${path}\n`).join("");
}
