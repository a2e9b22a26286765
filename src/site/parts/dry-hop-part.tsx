import { AdditionTable } from "../components/addition-table.js";
import { Cautions } from "../components/caution.js";
import { ChartFigure } from "../components/chart-figure.js";
import { CheckList } from "../components/check-list.js";
import { FigureTable } from "../components/figure-table.js";
import { sentence } from "../text/printed-words.js";
import { checksOf } from "../views/part-checks.js";
import { PART_FIGURES } from "../views/part-figures.js";
import { chartOf, rowsOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";
import { useWords } from "../page/use-words.js";

/** Dose, oil, contact and temperature in contact, and what the log shows against the plan. */
export function DryHopPart({ view }: { readonly view: BatchView }) {
  const words = useWords();
  const { dryHops, figures } = view.report;
  const none = dryHops.length === 0 && figures["dry-hop-mass"] !== undefined;
  const isPlanned = dryHops.length === 0 && view.report.planned["dry-hop-dose"] !== undefined;
  const chart = chartOf(view, "contact-temperature");
  const notes = [...new Set(dryHops.flatMap((addition) => addition.notes))];
  return (
    <Part id="dry-hop">
      {none ? <p>This batch had no dry hop, and its record says so.</p> : null}
      {isPlanned ? <p>Nothing yet. What is planned:</p> : null}
      {dryHops.length === 0 && !none && !isPlanned ? <p>No dry hop is recorded. An entry under <code>dry_hops</code> would tell it; an empty list says there was none.</p> : null}
      <Cautions of={view.report} part="dry-hop" />
      {none ? null : <FigureTable rows={rowsOf(view, PART_FIGURES.dryHop)} caption={dryHops.length > 1 ? "All additions together" : "The dry hop"} />}
      {dryHops.length === 0 ? null : <AdditionTable dryHops={dryHops} />}
      {chart === undefined ? null : <ChartFigure {...chart} />}
      {notes.map((note) => <p key={note} class="log-note">{words(sentence(note))}</p>)}
      <CheckList checks={checksOf(view.report, "dry-hop")} />
    </Part>
  );
}
