import type { CompetitionEntry, GapReport, StabilityReport } from "../../report/index.js";
import { entryTitle } from "../components/entry-name.js";
import { WideTable } from "../components/wide-table.js";
import { printedPlace, printedPoints } from "../text/printed-points.js";

export interface StabilityProps {
  readonly stability: StabilityReport;
  readonly entries: readonly CompetitionEntry[];
}

/** How firmly the order stands: each place with one judge left out, each step with its interval. */
export function StabilityPart({ stability: { entries: stable, gaps, says }, entries }: StabilityProps) {
  const titles = new Map(entries.map((entry) => [entry.entry, entryTitle(entry)]));
  const judges = stable[0]?.without.map(({ judge }) => judge) ?? [];
  return (
    <>
      <h3>How firmly the order stands</h3>
      <p>{says}</p>
      <Gaps gaps={gaps} titles={titles} />
      <WideTable label="Places with one judge left out">
        <table class="left-out">
          <caption>The place each would have by first scores alone</caption>
          <thead>
            <tr>
              <th scope="col">Entry</th><th scope="col">Awarded</th><th scope="col">All judges</th>
              {judges.map((judge) => <th key={judge} scope="col">without <bdi>{judge}</bdi></th>)}
            </tr>
          </thead>
          <tbody>
            {stable.map(({ entry, place, byMean, without }) => (
              <tr key={entry}>
                <th scope="row"><bdi>{titles.get(entry) ?? entry}</bdi></th>
                <td>{printedPlace({ place })}</td><td>{printedPlace({ place: byMean })}</td>
                {without.map(({ judge, place: left }) => <td key={judge}>{left === place ? printedPlace({ place: left }) : <b>{printedPlace({ place: left })}</b>}</td>)}
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
    </>
  );
}

function Gaps({ gaps, titles }: { readonly gaps: readonly GapReport[]; readonly titles: ReadonlyMap<string, string> }) {
  if (gaps.length === 0) return null;
  const named = (entry: string): string => titles.get(entry) ?? entry;
  return (
    <ul class="gaps">
      {gaps.map(({ first, second, clear, difference, low, high }) => (
        <li key={first}>
          <bdi>{named(first)}</bdi> before <bdi>{named(second)}</bdi>:{" "}
          {difference === undefined || low === undefined || high === undefined ? null : (
            <><span class="number">{printedPoints(difference)}</span> points by first scores, 95 % interval <span class="number">{printedPoints(low)}</span> to <span class="number">{printedPoints(high)}</span>; </>
          )}
          {clear ? "wider than the judges’ scatter." : <b>a close call.</b>}
        </li>
      ))}
    </ul>
  );
}
