import type { BatchReport } from "../../report/index.js";
import { compareDataFiles } from "../data/compare-data.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** Two to four batches side by side, chosen by the address: `compare.html#tp-02,tp-03`. */
export function compareFiles(site: Site): SiteFile[] {
  const { batches, club, series } = site.inputs.log;
  const choices = batches.map(({ slug, batch, title }) => ({ slug, batch, title }));
  return [
    pageFile(site, {
      path: "compare.html",
      title: "Side by side",
      description: `Any two to four batches of ${club.name} in one table: recipe, process, figures with their uncertainty, and tastings, differences first.`,
      madeFrom: [choices, series],
      content: () => <Compare choices={choices} series={series} />,
    }),
    ...compareDataFiles(site),
  ];
}

interface CompareProps {
  readonly choices: readonly Pick<BatchReport, "slug" | "batch" | "title">[];
  readonly series: readonly { readonly name: string; readonly slug: string }[];
}

function Compare({ choices, series }: CompareProps) {
  const link = useLink();
  return (
    <>
      <h1>Side by side</h1>
      {/* Says before the first paint that scripts run, so that nothing moves. */}
      <script src={link("assets/compare.js")} />
      <div class="without-script">
        <p>
          Setting any batches side by side is done by your browser, with a script, and scripts don’t run here. Each <a href={link("batches/index.html")}>batch</a> is held against the one it repeats on its own page, under “What changed since the last one”
          {series.length === 0 ? "." : ", and each series tells its versions one after the other:"}
        </p>
        {series.length === 0 ? null : <ul>{series.map(({ name, slug }) => <li key={slug}><a href={link(`series/${slug}.html`)}><bdi>{name}</bdi></a></li>)}</ul>}
      </div>
      <div class="needs-script">
        <p class="compare-add screen-only">
          <label for="compare-batch">Set another batch beside</label>{" "}
          <select id="compare-batch">
            <option value="">choose one of {choices.length}</option>
            {choices.map(({ slug, batch, title }) => <option key={slug} value={slug}>{batch}, {title}</option>)}
          </select>
        </p>
        <ul id="compare-who" class="compared" />
        <p id="compare-says" role="status" />
        <div id="compare-table" />
        <p class="row-note">
          Two figures differ here when they lie further apart than both their half-widths together, √(a² + b²), at 95 %. A recipe is the same whatever the order and the unit it was written in. Tastings are set side by side but not held against each other, since each had a panel of its own. Every figure’s working is on its batch’s page.
        </p>
      </div>
    </>
  );
}
