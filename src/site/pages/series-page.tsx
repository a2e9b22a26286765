import type { BatchReport, SeriesTastings, SeriesVersions } from "../../report/index.js";
import { ChartFigure } from "../components/chart-figure.js";
import { Notes } from "../components/notes.js";
import { VersionTable } from "../components/version-table.js";
import { chartTableCsv } from "../data/chart-csv.js";
import { seriesCharts } from "../page-charts.js";
import { chartCsvPath, seriesPage } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { pageFile, textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { useWords } from "../page/use-words.js";
import { SeriesTastingsPart } from "../parts/series-tastings.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";

/** One beer, version after version: what was changed, what it did. */
export function seriesFiles(site: Site): SiteFile[] {
  const { units } = site.inputs.log.club;
  return site.inputs.log.series.flatMap(({ name, slug, batches, versions: changes, tastings }) => {
    const versions = batches.flatMap((batch) => site.batches.get(batch) ?? []);
    const page = seriesPage(slug);
    return [
      pageFile(site, {
        path: `${page}.html`,
        title: `Series ${name}`,
        description: `${name}, version after version: ${versions.length} brewed or planned, what changed each time and what it did.`,
        madeFrom: [name, changes, tastings ?? null, [...site.batches.keys()], [...site.inputs.photos], versions.map(({ slug: version, batch, title, brewed, status, summary, notes, photos, file }) => ({ version, batch, title, brewed, status, summary, notes, photos, file }))],
        content: () => <Series name={name} slug={slug} versions={versions} changes={changes} tastings={tastings} site={site} />,
      }),
      ...seriesCharts(changes, units).map((chart) => textFile(site, chartCsvPath(page, chart), [units, chart.table], () => chartTableCsv(chart.table))),
    ];
  });
}

interface SeriesProps {
  readonly name: string;
  readonly slug: string;
  readonly versions: readonly BatchReport[];
  readonly changes: SeriesVersions | undefined;
  readonly tastings: SeriesTastings | undefined;
  readonly site: Site;
}

function Series({ name, slug, versions, changes, tastings, site }: SeriesProps) {
  return (
    <>
      <header class="opening">
        <p class="overline">Series</p>
        <h1><bdi>{name}</bdi></h1>
        <p class="lead">{versions.length === 1 ? "One version so far." : `${versions.length} versions of one beer, oldest first.`}</p>
        {changes === undefined || changes.says === "" ? null : <p>{changes.says}</p>}
      </header>
      {changes === undefined || versions.length < 2 ? null : (
        <>
          <Moved slug={slug} changes={changes} site={site} />
          <section class="full">
            <h2>What changed</h2>
            <VersionTable batches={versions.map(({ batch }) => batch)} rows={changes.rows} />
          </section>
        </>
      )}
      <SeriesTastingsPart tastings={tastings} />
      {versions.map((version) => <Version key={version.slug} version={version} site={site} />)}
    </>
  );
}

function Moved({ slug, changes, site }: { readonly slug: string; readonly changes: SeriesVersions; readonly site: Site }) {
  const page = seriesPage(slug);
  const charts = seriesCharts(changes, site.inputs.log.club.units);
  if (charts.length === 0) return null;
  return (
    <section class="full">
      <h2>What moved</h2>
      <div class="small-charts">
        {charts.map((chart) => <ChartFigure key={chart.id} chart={chart} markup={site.inputs.chartMarkup(page, chart.id)} csv={chartCsvPath(page, chart)} />)}
      </div>
    </section>
  );
}

function Version({ version, site }: { readonly version: BatchReport; readonly site: Site }) {
  const words = useWords();
  const link = useLink();
  const { slug, batch, title, brewed, status, summary, notes } = version;
  const pages: ReadonlySet<string> = new Set([...site.batches.keys()].map((known) => `batches/${known}.html`));
  return (
    <section>
      <h2><a href={link(`batches/${slug}.html`)}><bdi>{batch}</bdi> <bdi>{title}</bdi></a></h2>
      <p class="overline">{status === "planned" ? "To be brewed" : "Brewed"} {printedDate(brewed)}, {status}</p>
      {summary === "" ? null : <p>{words(summary)}</p>}
      {notes.trim() === "" ? null : (
        <details>
          <summary>The brewer’s own notes</summary>
          <Notes report={version} photos={site.inputs.photos} pages={pages} />
        </details>
      )}
    </section>
  );
}
