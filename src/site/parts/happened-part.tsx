import { Cautions } from "../components/caution.js";
import { ChartFigure } from "../components/chart-figure.js";
import { CheckList } from "../components/check-list.js";
import { EventTable } from "../components/event-table.js";
import { FigureTable } from "../components/figure-table.js";
import { printedDate } from "../text/printed-date.js";
import { checksOf } from "../views/part-checks.js";
import { PART_FIGURES } from "../views/part-figures.js";
import { chartOf, rowsOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";
import { useWords } from "../page/use-words.js";

/** Temperature and gravity against time, every event, and the figures of fermentation and crash. */
export function HappenedPart({ view }: { readonly view: BatchView }) {
  const words = useWords();
  const { report } = view;
  const { timeline } = report;
  const chart = chartOf(view, "fermentation");
  return (
    <Part id="what-happened">
      {timeline !== undefined ? null : (
        report.status === "planned" ? <p>Nothing yet: it is to be brewed on {printedDate(report.brewed)}. What is planned:</p> : <p>No reading of the fermentation is recorded. A log under <code>fermentation.log</code>, or hand readings under <code>fermentation.readings</code>, would draw it here.</p>
      )}
      <div class="picture-and-days">
        {chart === undefined ? null : <ChartFigure {...chart} />}
        <EventTable events={timeline?.events ?? []} />
      </div>
      {(timeline?.notes ?? []).map((note) => <p key={note} class="log-note">{words(note)}</p>)}
      <FigureTable rows={rowsOf(view, PART_FIGURES.fermentation)} caption="Fermentation" />
      <Cautions of={view.report} part="what-happened" />
      <FigureTable rows={rowsOf(view, PART_FIGURES.crash)} caption="The crash" />
      <CheckList checks={checksOf(view.report, "what-happened")} />
    </Part>
  );
}
