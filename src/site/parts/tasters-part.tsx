import { ChartFigure } from "../components/chart-figure.js";
import { CheckList } from "../components/check-list.js";
import { Tasting } from "../components/tasting.js";
import { checksOf } from "../views/batch-parts.js";
import { chartOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";

const TASTING_CHARTS = ["scores", "triangle", "preference"] as const;

/** What the panel could tell, which it preferred and what moved; and what it was too small to see. */
export function TastersPart({ view }: { readonly view: BatchView }) {
  const { tastings } = view.report;
  return (
    <Part id="tasters">
      {tastings.length > 0 ? null : (
        <p>No tasting is recorded. Keep a sample back before the dry hop (<code>samples</code>, with <code>kept</code>), pour both for a few people who don’t know which is which, and write what they found under <code>tastings</code>.</p>
      )}
      {tastings.map((tasting, index) => (
        <div key={index} class="tasting" id={`tasting-${index + 1}`}>
          <Tasting tasting={tasting} />
          {TASTING_CHARTS.map((kind) => {
            const chart = chartOf(view, `tasting-${index + 1}-${kind}`);
            return chart === undefined ? null : <ChartFigure key={kind} {...chart} />;
          })}
        </div>
      ))}
      <CheckList checks={checksOf(view.report, "tasters")} />
    </Part>
  );
}
