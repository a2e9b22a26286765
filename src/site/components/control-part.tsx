import type { SeasonSeries, SignalReport } from "../../report/index.js";
import { useLink } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";

/** What holds and what doesn't, figure by figure, before any chart. */
export function ControlVerdicts({ series }: { readonly series: readonly SeasonSeries[] }) {
  const signalled = series.filter(({ control }) => (control?.signals.length ?? 0) > 0);
  const steady = series.filter(({ control }) => control !== undefined && control.standing !== "none" && control.signals.length === 0);
  const few = series.filter(({ control }) => control?.standing === "none");
  return (
    <ul class="verdicts">
      {signalled.map((each) => <li key={each.figure}><b>{each.title}</b>: <Signals signals={each.control?.signals ?? []} /></li>)}
      {steady.length === 0 ? null : <li><b>{steady.map(({ title }) => title).join(", ")}</b>: within limits, no signal.</li>}
      {few.length === 0 ? null : <li><b>{few.map(({ title }) => title).join(", ")}</b>: fewer than eight batches, so no limits.</li>}
    </ul>
  );
}

function Signals({ signals }: { readonly signals: readonly SignalReport[] }) {
  const link = useLink();
  const words = useWords();
  return (
    <>
      {signals.map(({ batch, slug, rule, side, since, different }, index) => (
        <span key={`${batch} ${rule}`}>
          {index === 0 ? null : " "}
          {since === undefined ? null : <>eight in a row {side} the centre, <bdi>{since}</bdi> to </>}
          <a href={link(`batches/${slug}.html`)}><bdi>{batch}</bdi></a>
          {since === undefined ? ` ${side} the limit` : null}
          {different.length === 0 ? "; nothing on record sets it apart." : `; what was different: ${words(different.join(", "))}.`}
        </span>
      ))}
    </>
  );
}
