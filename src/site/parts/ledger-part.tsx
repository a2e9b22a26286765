import { Cautions, MarginNote } from "../components/caution.js";
import { ChartFigure } from "../components/chart-figure.js";
import { CheckList } from "../components/check-list.js";
import { Figure } from "../components/figure.js";
import { FigureTable } from "../components/figure-table.js";
import { LedgerTable } from "../components/ledger-table.js";
import { checksOf } from "../views/part-checks.js";
import { PART_FIGURES } from "../views/part-figures.js";
import { chartOf, rowsOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";
import { useWords } from "../page/use-words.js";

/** From fermenter to package, litre by litre. */
export function LedgerPart({ view }: { readonly view: BatchView }) {
  const words = useWords();
  const { ledgerDetail: ledger } = view.report;
  const chart = chartOf(view, "ledger");
  return (
    <Part id="ledger">
      {ledger === undefined ? (
        <NotYet status={view.report.status} />
      ) : (
        <>
          {chart === undefined ? <p>{words(ledger.says)}</p> : <ChartFigure {...chart} />}
          {ledger.hopLoss === undefined ? null : (
            <MarginNote>
              Hops of this mass and form hold <Figure value={ledger.hopLoss.low} low={ledger.hopLoss.low} high={ledger.hopLoss.high} unit="L" /> of beer: {words(ledger.hopLoss.source)}.
            </MarginNote>
          )}
          <LedgerTable ledger={ledger} />
        </>
      )}
      <Cautions of={view.report} part="ledger" />
      <FigureTable rows={rowsOf(view, PART_FIGURES.ledger)} caption="What came through" />
      <CheckList checks={checksOf(view.report, "ledger")} />
    </Part>
  );
}

const STILL_IN: ReadonlySet<string> = new Set(["fermenting", "conditioning"]);

/** Why there is no ledger: it isn't time for one, or volumes are missing. */
function NotYet({ status }: { readonly status: string }) {
  if (status === "planned") return <p>Nothing yet. What the hops are expected to keep stands under the aim.</p>;
  if (STILL_IN.has(status)) return <p>The ledger closes once the beer is moved and packaged, and both volumes are read.</p>;
  return <p>The volumes don’t say. <code>fermenter.volume</code> opens the ledger; <code>transfer</code> and <code>package</code> close it.</p>;
}
