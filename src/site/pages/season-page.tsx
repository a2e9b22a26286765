import type { Chart } from "../../charts/index.js";
import type { SeasonReport } from "../../report/index.js";
import { BatchTable } from "../components/batch-table.js";
import { ChartFigure } from "../components/chart-figure.js";
import { ControlVerdicts } from "../components/control-part.js";
import { Lead } from "../components/lead.js";
import { PooledTable } from "../components/pooled-table.js";
import { RelationTable } from "../components/relation-table.js";
import { SeasonExplore } from "../components/season-explore.js";
import { chartTableCsv } from "../data/chart-csv.js";
import { exploreData, exploreScript } from "../data/explore-data.js";
import { seasonJson } from "../data/season-json.js";
import { chartCsvPath, seasonPage } from "../page-paths.js";
import { seasonCharts } from "../page-charts.js";
import { useLink } from "../page/page-context.js";
import { pageFile, textFile } from "../page/page-file.js";
import { type Site, workingIn, workingsKnown } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** A season's page, its report as JSON, the numbers of its charts, and what its own script may draw. */
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
      textFile(site, explorePath(season), [units, season], () => exploreScript(exploreData(season, units))),
      ...seasonCharts(season, units).map((chart) => textFile(site, chartCsvPath(page, chart), [units, chart.table], () => chartTableCsv(chart.table))),
    ];
  });
}

const explorePath = ({ slug }: SeasonReport): string => `${seasonPage(slug)}-explore.js`;

interface SeasonProps {
  readonly season: SeasonReport;
  readonly site: Site;
}

/** Verdicts first, in each part; what stands behind them is folded where it is long. */
function Season({ season, site }: SeasonProps) {
  const link = useLink();
  return (
    <>
      <header class="opening">
        <p class="overline">Season</p>
        <h1><bdi>{season.season}</bdi></h1>
        <Lead text={season.summary} />
        <p><a href="#batches">Its batches</a>. <a href={link(`${seasonPage(season.slug)}.json`)}>The season as JSON</a>.</p>
      </header>
      <Process season={season} site={site} />
      <Relations season={season} site={site} />
      <Tasted season={season} site={site} />
      <section>
        <h2>What was set, batch by batch</h2>
        <Charts charts={chartsOf(season, site, "season-figure")} season={season} site={site} folded="Dose, contact, gravity and the rest, batch by batch" />
        <Without season={season} />
      </section>
      <section class="full" id="batches">
        <h2>Batches</h2>
        <BatchTable rows={season.rows} label={`Batches of ${season.season}`} working={workingIn(site)} />
      </section>
      <SeasonExplore dataPath={explorePath(season)} />
    </>
  );
}

function Process({ season, site }: SeasonProps) {
  const controlled = season.series.filter(({ control }) => control !== undefined);
  const charts = chartsOf(season, site, "control");
  const told = (chart: Chart): boolean =>
    controlled.some(({ figure, control, claim }) => chart.id === `control-${figure}` && ((control?.signals.length ?? 0) > 0 || claim === "shown" || claim === "possible"));
  return (
    <section>
      <h2>Does the process hold?</h2>
      {controlled.length === 0 ? <p>Readings give no figure of the process in two batches yet.</p> : (
        <>
          <ControlVerdicts series={controlled} />
          <p class="aside">
            Limits come from how far a figure moves from one batch to the next. A batch beyond them, or eight in a row on one side of the centre line,
            is worth a look; by chance alone about 1 in 150 batches of a steady process would be. What was different in a batch is where to look first, not the
            cause.
          </p>
          <Charts charts={charts.filter(told)} season={season} site={site} />
          <Charts charts={charts.filter((chart) => !told(chart))} season={season} site={site} folded="Charts of what holds" />
        </>
      )}
    </section>
  );
}

function Relations({ season, site }: SeasonProps) {
  const charts = [...chartsOf(season, site, "relation"), ...chartsOf(season, site, "groups")];
  return (
    <section>
      <h2>One thing against another</h2>
      {season.relations.length === 0 ? <p>Too few batches have readings of any two figures to set one against the other.</p> : <p class="aside">{season.tested.says}</p>}
      <Charts charts={charts} season={season} site={site} />
      <RelationTable relations={season.relations.filter(({ onPage }) => !onPage)} groups={season.groups.filter(({ onPage }) => !onPage)} />
    </section>
  );
}

function Tasted({ season, site }: SeasonProps) {
  const [first, ...others] = chartsOf(season, site, "forest");
  return (
    <section>
      <h2>What the tasters found</h2>
      <PooledTable pooled={season.pooled} />
      {first === undefined ? null : <Charts charts={[first]} season={season} site={site} />}
      <Charts charts={others} season={season} site={site} folded="The other attributes, batch by batch" />
    </section>
  );
}

function chartsOf(season: SeasonReport, site: Site, kind: string): readonly Chart[] {
  return seasonCharts(season, site.inputs.log.club.units).filter((chart) => chart.kind === kind);
}

interface ChartsProps extends SeasonProps {
  readonly charts: readonly Chart[];
  /** What the fold is called; not folded where absent. */
  readonly folded?: string;
}

function Charts({ charts, season, site, folded }: ChartsProps) {
  if (charts.length === 0) return null;
  const page = seasonPage(season.slug);
  const figures = charts.map((chart) => (
    <ChartFigure key={chart.id} chart={chart} markup={site.inputs.chartMarkup(page, chart.id)} csv={chartCsvPath(page, chart)} />
  ));
  return folded === undefined ? <>{figures}</> : <details><summary>{folded} ({charts.length})</summary>{figures}</details>;
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
