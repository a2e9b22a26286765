import { FIGURE_TABLE } from "../../report/index.js";
import { NotMeasured } from "../components/figure.js";
import { Working } from "../components/working.js";
import { useLink } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import { figureRows, missingByReason } from "../views/figure-rows.js";
import { indexWorking } from "../views/working-index.js";
import type { BatchView } from "./batch-view.js";
import { Part } from "./part.js";

const EVERY_FIGURE: ReadonlySet<string> = new Set(FIGURE_TABLE.map(({ id }) => id));

/** Every figure with its relation, its inputs down to the readings, its uncertainty and its source. */
export function WorkingPart({ view }: { readonly view: BatchView }) {
  const words = useWords();
  const { report } = view;
  const link = useLink();
  const index = indexWorking(report);
  return (
    <Part id="working">
      <p>
        After ± stands the half-width that holds 95 % of what the readings leave open. Where several readings share it, the first named is the one to improve.
        {report.working.length === 0 && report.status !== "planned" ? " No figure could be worked out from what is recorded." : null}{" "}
        <a href={link("methods/index.html")}>All methods</a>.
      </p>
      {report.assumptions.map((assumption) => <p key={assumption} class="assumption">{words(assumption)}</p>)}
      {report.working.map((working) => <Working key={working.id} working={working} figure={report.figures[working.id]} index={index} />)}
      <NeverMeasured view={view} />
    </Part>
  );
}

function NeverMeasured({ view }: { readonly view: BatchView }) {
  const groups = missingByReason(figureRows(view.report, view.methods, EVERY_FIGURE));
  if (groups.length === 0) return null;
  return (
    <details>
      <summary>What isn’t known, and the reading that would give it ({groups.length})</summary>
      <ul class="missing-list">
        {groups.map(({ why, titles }) => <li key={why}>{titles.join(", ")}: <NotMeasured why={why} /></li>)}
      </ul>
    </details>
  );
}
