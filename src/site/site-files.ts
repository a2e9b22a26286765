import { calendarFiles } from "./data/calendar.js";
import { dataFiles } from "./data/data-files.js";
import { indexSite, type Site } from "./page/site.js";
import { batchListFiles } from "./pages/batch-list-page.js";
import { batchFiles } from "./pages/batch-page.js";
import { competitionListFiles } from "./pages/competition-list-page.js";
import { competitionFiles } from "./pages/competition-page.js";
import { helpFiles } from "./pages/help-pages.js";
import { homeFiles } from "./pages/home-page.js";
import { hopFiles } from "./pages/hop-page.js";
import { methodFiles } from "./pages/method-pages.js";
import { notFoundFiles } from "./pages/not-found-page.js";
import { seasonFiles } from "./pages/season-page.js";
import { seriesFiles } from "./pages/series-page.js";
import type { SiteFile } from "./site-file.js";
import type { SiteInputs } from "./site-inputs.js";

/** What the site consists of: a new kind of page is a new file and one line here. */
const CONTENTS: readonly ((site: Site) => SiteFile[])[] = [
  homeFiles, batchListFiles, batchFiles, seasonFiles, seriesFiles, hopFiles, competitionListFiles, competitionFiles, methodFiles, helpFiles, notFoundFiles, calendarFiles, dataFiles,
];

/** Every file of the site that depends on the log. Only keys are computed here; each file renders when asked. */
export function siteFiles(inputs: SiteInputs): SiteFile[] {
  const site = indexSite(inputs);
  return CONTENTS.flatMap((filesOf) => filesOf(site));
}
