import { calendarFiles } from "./data/calendar.js";
import { dataFiles } from "./data/data-files.js";
import { feedFiles } from "./data/feed.js";
import { groupFiles } from "./data/group-files.js";
import { searchDataFiles } from "./data/search-data.js";
import { siteMapFiles } from "./data/site-map.js";
import { indexSite, type Site } from "./page/site.js";
import { batchListFiles } from "./pages/batch-list-page.js";
import { batchFiles } from "./pages/batch-page.js";
import { competitionListFiles } from "./pages/competition-list-page.js";
import { competitionFiles } from "./pages/competition-page.js";
import { compareFiles } from "./pages/compare-page.js";
import { helpFiles } from "./pages/help-pages.js";
import { homeFiles } from "./pages/home-page.js";
import { hopFiles } from "./pages/hop-page.js";
import { methodFiles } from "./pages/method-pages.js";
import { notFoundFiles } from "./pages/not-found-page.js";
import { seasonFiles } from "./pages/season-page.js";
import { searchFiles } from "./pages/search-page.js";
import { seriesFiles } from "./pages/series-page.js";
import type { SiteFile } from "./site-file.js";
import type { SiteInputs } from "./site-inputs.js";

/** What the site consists of: a new kind of page is a new file and one line here. */
const CONTENTS: readonly ((site: Site) => SiteFile[])[] = [
  homeFiles, batchListFiles, batchFiles, seasonFiles, seriesFiles, hopFiles, competitionListFiles, competitionFiles, methodFiles, helpFiles, notFoundFiles, calendarFiles, dataFiles,
  groupFiles, feedFiles, searchFiles, compareFiles,
];

/** Made from the pages that there are. */
const INDEXES: readonly ((site: Site, pages: readonly SiteFile[]) => SiteFile[])[] = [searchDataFiles, siteMapFiles];

/** Every file of the site that depends on the log. Only keys are computed here; each file renders when asked. */
export function siteFiles(inputs: SiteInputs): SiteFile[] {
  const site = indexSite(inputs);
  const files = CONTENTS.flatMap((filesOf) => filesOf(site));
  return [...files, ...INDEXES.flatMap((indexOf) => indexOf(site, files))];
}
