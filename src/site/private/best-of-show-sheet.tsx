import type { CompetitionDay } from "../../report/index.js";
import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** One sheet a judge to rank the best beers side by side. */
export function bestOfShowSheets({ report: { day } }: PrivateInputs): PrivateSheet[] {
  if (day === undefined) return [];
  return [{ path: "best-of-show.html", title: "Best of show", says: "To rank what came first in its flight, side by side.", eyes: "for the judges of best of show", content: () => <BestOfShow day={day} /> }];
}

function BestOfShow({ day }: { readonly day: CompetitionDay }) {
  const rows = day.finalists.length > 0 ? day.finalists : day.flights.map(() => "");
  const styles = new Map(day.entries.map(({ code, style }) => [code, style ?? ""]));
  return (
    <PaperPage head={`${day.name}: best of show. Judge ……………`} title="Best of show">
      <p>First places side by side, each weighed against its own style, then against the others: leave out the weakest one by one and rank the rest. An odd number of judges, and none with a beer in the round. No points.</p>
      <table class="to-fill">
        <thead><tr><th scope="col">Cup</th><th scope="col">Style</th><th scope="col">Rank</th><th scope="col">Why</th></tr></thead>
        <tbody>{rows.map((code, index) => <tr key={index}><th scope="row" class="code">{code}</th><td><bdi>{styles.get(code) ?? ""}</bdi></td><td /><td class="wide" /></tr>)}</tbody>
      </table>
      <p class="small">Goes into best-of-show.csv as judge, code, rank; where judges settle a tie, place and decision as well. The lowest sum of ranks stands first.</p>
    </PaperPage>
  );
}
