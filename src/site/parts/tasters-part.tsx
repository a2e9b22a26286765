import { MarginNote } from "../components/caution.js";
import { ChartFigure } from "../components/chart-figure.js";
import { CheckList } from "../components/check-list.js";
import { Tasting } from "../components/tasting.js";
import { checksOf } from "../views/part-checks.js";
import { useLink } from "../page/page-context.js";
import type { TastedElsewhere } from "../../report/index.js";
import { chartOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";

/** Small charts stand in the margin, as the counts they draw are few. */
const IN_MARGIN = ["triangle", "tetrad", "duo-trio", "pair", "preference"] as const;

/** What the panel could tell, which it preferred and what moved; and what it was too small to see. */
export function TastersPart({ view }: { readonly view: BatchView }) {
  const { report } = view;
  const { tastings } = report;
  return (
    <Part id="tasters">
      {tastings.length > 0 ? null : (
        <p>{report.status === "planned" ? "Nothing yet." : "No tasting is recorded."} Keep a sample back before the dry hop (<code>samples</code>, with <code>kept</code>), pour both for a few people who don’t know which is which, and write what they found under <code>tastings</code>.</p>
      )}
      {tastings.map((tasting, index) => (
        <div key={index} class="tasting" id={`tasting-${index + 1}`}>
          <Tasting tasting={tasting} pictures={<TastingCharts view={view} tasting={`tasting-${index + 1}`} attributes={tasting.attributes.length} />} />
        </div>
      ))}
      {(view.report.tastedElsewhere ?? []).map((elsewhere) => <Elsewhere key={`${elsewhere.slug} ${elsewhere.number}`} elsewhere={elsewhere} />)}
      <CheckList checks={checksOf(view.report, "tasters")} />
    </Part>
  );
}

/** A tasting that another batch's record tells: the same result, with a link to where it is told. */
function Elsewhere({ elsewhere: { batch, slug, title, number, tasting } }: { readonly elsewhere: TastedElsewhere }) {
  const link = useLink();
  return (
    <div class="tasting">
      <Tasting tasting={tasting} pictures={<p>Poured beside <a href={link(`batches/${slug}.html#tasting-${number}`)}><bdi>{batch}</bdi>, <bdi>{title}</bdi></a>, whose record tells it.</p>} />
    </div>
  );
}

function TastingCharts({ view, tasting, attributes }: { readonly view: BatchView; readonly tasting: string; readonly attributes: number }) {
  const scores = chartOf(view, `${tasting}-scores`);
  // The primary attribute stands large; the rest are small and beside one another, so that each taster is seen in each.
  const others = Array.from({ length: Math.max(0, attributes - 1) }, (_, index) => chartOf(view, `${tasting}-scores-${index + 2}`)).filter((chart) => chart !== undefined);
  return (
    <>
      {IN_MARGIN.map((kind) => {
        const chart = chartOf(view, `${tasting}-${kind}`);
        return chart === undefined ? null : <MarginNote key={kind}><ChartFigure {...chart} /></MarginNote>;
      })}
      {scores === undefined ? null : <ChartFigure {...scores} />}
      {others.length === 0 ? null : <div class="attribute-charts">{others.map((chart) => <ChartFigure key={chart.chart.id} {...chart} />)}</div>}
    </>
  );
}
