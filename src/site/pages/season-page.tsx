import type { SeasonReport } from "../../report/index.js";
import { BatchTable } from "../components/batch-table.js";
import { ChartFigure } from "../components/chart-figure.js";
import { Lead } from "../components/lead.js";
import { PooledTable } from "../components/pooled-table.js";
import { chartTableCsv } from "../data/chart-csv.js";
import { seasonJson } from "../data/season-json.js";
import { chartCsvPath, seasonPage } from "../page-paths.js";
import { seasonCharts } from "../page-charts.js";
import { useLink } from "../page/page-context.js";
import { pageFile, textFile } from "../page/page-file.js";
import { type Site, workingIn, workingsKnown } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** A season's page, its report as JSON and the numbers of its charts. */
export function seasonFiles(site: Site): SiteFile[] {
  const { units } = site.inputs.log.club;
  return site.inputs.log.seasons.flatMap((season) => {
    const page = seasonPage(season.slug);
    return [
      pageFile(site, {
        path: `${page}.html`, title: `Season ${season.season}`, description: season.summary,
        madeFrom: [season, workingsKnown(site)], content: () => <Season season={season} site={site} />,
      }),
      textFile(site, `${page}.json`, [season], () => seasonJson(season)),
      ...seasonCharts(season, units).map((chart) => textFile(site, chartCsvPath(page, chart), [units, chart.table], () => chartTableCsv(chart.table))),
    ];
  });
}

interface SeasonProps {
  readonly season: SeasonReport;
  readonly site: Site;
}

function Season({ season, site }: SeasonProps) {
  const link = useLink();
  return (
    <>
      <header class="opening">
        <p class="overline">Season</p>
        <h1><bdi>{season.season}</bdi></h1>
        <Lead text={season.summary} />
        <p><a href={link(`${seasonPage(season.slug)}.json`)}>The season as JSON</a></p>
      </header>
      <section class="full">
        <h2>Batches</h2>
        <BatchTable rows={season.rows} label={`Batches of ${season.season}`} working={workingIn(site)} />
      </section>
      <section>
        <h2>Batch after batch</h2>
        <Charts season={season} site={site} kind="season-figure" />
        <Without season={season} />
      </section>
      <section>
        <h2>One thing against another</h2>
        {season.relations.length === 0 ? <p>No two figures are measured in enough batches to set one against the other.</p> : null}
        <Charts season={season} site={site} kind="relation" />
      </section>
      <section>
        <h2>What the tasters found</h2>
        <PooledTable pooled={season.pooled} />
      </section>
    </>
  );
}

function Charts({ season, site, kind }: SeasonProps & { readonly kind: string }) {
  const page = seasonPage(season.slug);
  const charts = seasonCharts(season, site.inputs.log.club.units).filter((chart) => chart.kind === kind);
  return (
    <>
      {charts.map((chart) => (
        <ChartFigure key={chart.id} chart={chart} markup={site.inputs.chartMarkup(page, chart.id)} csv={chartCsvPath(page, chart)} />
      ))}
    </>
  );
}

/** Batches that a chart leaves out, and the reading that would bring them in. */
function Without({ season }: { readonly season: SeasonReport }) {
  const told = season.series.filter(({ without }) => without.length > 0);
  if (told.length === 0) return null;
  return (
    <details>
      <summary>Batches that these charts leave out, and why</summary>
      <ul class="missing-list">
        {told.map(({ figure, title, without }) => (
          <li key={figure}>{title}: {without.map(({ batch, why }, index) => <span key={batch}>{index === 0 ? null : "; "}<bdi>{batch}</bdi>, {why}</span>)}</li>
        ))}
      </ul>
    </details>
  );
}
