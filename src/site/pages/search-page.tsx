import type { BatchReport } from "../../report/index.js";
import { searchedFigures } from "../data/search-data.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** What a search can be narrowed by, in the order of its form. */
const CHOICES = [
  ["hop", "Hop", (batch: BatchReport) => [...batch.recipe.kettleHops, ...batch.recipe.dryHops].map(({ what }) => what)],
  ["style", "Style", ({ style }: BatchReport) => (style === undefined ? [] : [style])],
  ["brewer", "Brewer", ({ brewer }: BatchReport) => (brewer === undefined ? [] : [brewer])],
  ["season", "Season", ({ season }: BatchReport) => (season === undefined ? [] : [season])],
  ["status", "How far", ({ status }: BatchReport) => [status]],
] as const;

/** Search over every batch and page, in the reader's own browser: no server, no network, from disk too. */
export function searchFiles(site: Site): SiteFile[] {
  const { batches, club } = site.inputs.log;
  const choices = CHOICES.map(([id, title, valuesOf]) => ({ id, title, values: [...new Set(batches.flatMap((batch) => [...valuesOf(batch)]))].toSorted((one, other) => one.localeCompare(other, "en")) }));
  const figures = searchedFigures(batches);
  return [pageFile(site, {
    path: "search.html",
    title: "Search",
    description: `Search the gyle book of ${club.name}: words of the notes, hops, styles, brewers, seasons, and figures by range.`,
    scripts: ["assets/minisearch.js", "search-data.js"],
    madeFrom: [choices, figures],
    content: () => <Search choices={choices} figures={figures} />,
  })];
}

interface Choice {
  readonly id: string;
  readonly title: string;
  readonly values: readonly string[];
}

function Search({ choices, figures }: { readonly choices: readonly Choice[]; readonly figures: readonly { readonly id: string; readonly title: string; readonly unit: string }[] }) {
  const link = useLink();
  return (
    <>
      <h1>Search</h1>
      {/* Says before the first paint that scripts run, so that nothing moves. */}
      <script src={link("assets/search.js")} />
      <p class="without-script">
        Searching is done by your browser, with a script, and scripts don’t run here. All batches stand in <a href={link("batches/index.html")}>one table</a>, which the browser’s own “find in page” goes through; hops, series and seasons are listed on the <a href={link("index.html#hops")}>first page</a>.
      </p>
      <div class="needs-script search" role="search">
        <p class="search-words">
          <label for="search-words">Words of the notes, hops, malts, styles, brewers, what tasters found</label>
          <input id="search-words" type="search" autocomplete="off" spellcheck={false} enterkeyhint="search" aria-describedby="search-keys" />
        </p>
        <p id="search-keys" class="row-note">The arrow keys go down and up through what is found. A word may be begun only, or a letter off.</p>
        <div class="search-choices">
          {choices.filter(({ values }) => values.length > 0).map(({ id, title, values }) => (
            <p key={id}>
              <label for={`search-${id}`}>{title}</label>
              <select id={`search-${id}`} data-field={id}>
                <option value="">any</option>
                {values.map((value) => <option key={value} value={value}>{value}</option>)}
              </select>
            </p>
          ))}
        </div>
        {figures.length === 0 ? null : (
          <p class="search-range">
            <label for="search-figure">With the figure</label>{" "}
            <select id="search-figure">
              <option value="">any</option>
              {figures.map(({ id, title, unit }) => <option key={id} value={id}>{unit === "" ? title : `${title}, ${unit}`}</option>)}
            </select>{" "}
            <label for="search-from">from</label>{" "}<input id="search-from" type="text" inputmode="decimal" autocomplete="off" size={6} />{" "}
            <label for="search-to">to</label>{" "}<input id="search-to" type="text" inputmode="decimal" autocomplete="off" size={6} />
          </p>
        )}
        <p id="search-count" role="status" />
        <ol id="search-found" class="found" />
      </div>
    </>
  );
}
