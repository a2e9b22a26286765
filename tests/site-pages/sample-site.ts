import { problemKinds } from "../../src/problems/index.js";
import { methodAbouts } from "../../src/science/index.js";
import type { LogReport } from "../../src/report/index.js";
import { siteFiles, type SiteFile, type SiteInputs } from "../../src/site/index.js";
import { sampleLog } from "./sample-report.js";

/** A stand-in for a drawn chart, in the shape that charts come in. */
const drawing = (id: string): string =>
  `<svg class="chart chart-wide" viewBox="0 0 680 300" role="img" aria-labelledby="${id}-t"><title id="${id}-t">${id}</title><rect width="680" height="300" fill="none" stroke="currentColor"></rect></svg>`;

/** The sample log as the site takes it. */
export function sampleInputs(log: LogReport = sampleLog()): SiteInputs {
  return {
    log, version: "0.0.0-test", methods: methodAbouts,
    recordFields: [
      { path: "title", meaning: "What the batch is called", required: true, example: "Tideline Pale, third go" },
      { path: "dry_hops[].amount", meaning: "Mass of the addition", unit: "mass", range: "from 0 g", example: "110 g" },
      { path: "zone", meaning: "Time zone of every date", file: "club.yaml", default: "UTC" },
    ],
    problemCatalogue: problemKinds(),
    chartMarkup: (page, id) => drawing(`${page.replace("/", "-")}-${id}`),
    photos: new Map([["batches/2026-01-tideline-3/boil.jpg", { path: "photos/0123abcd.jpg", width: 960, height: 640 }]]),
    logs: [{ slug: "tp-03", text: "time,temperature [C]\r\n2026-01-24 16:10,18.2\r\n", sha256: "0".repeat(64) }],
  };
}

export function sampleSite(log?: LogReport): SiteFile[] {
  return siteFiles(sampleInputs(log));
}

/** The file of a site by its path; asking for one that isn't there is a mistake in the test. */
export function rendered(files: readonly SiteFile[], path: string): string {
  const file = files.find((known) => known.path === path);
  if (file === undefined) throw new Error(`the site has no ${path}`);
  return file.render();
}
