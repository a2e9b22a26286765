import type { RankingReport, RankSum } from "../../report/index.js";
import { Figure, Probability } from "./figure.js";

/** Samples in the order they were to be ranked, with what their ranks add up to. */
export function RankingTable({ ranking }: { readonly ranking: RankingReport | undefined }) {
  if (ranking === undefined) return null;
  const { sums, tasters, p, exact, ordered, leastDifference } = ranking;
  return (
    <table class="counts ranking stack">
      <caption>Ranks by {tasters} tasters: the lower the sum, the more often put first</caption>
      <thead><tr><th scope="col">Sample</th><th scope="col">Rank sum</th><th scope="col">Mean rank</th><th scope="col">Put where</th></tr></thead>
      <tbody>
        {sums.map(({ sample, sum, places }) => (
          <tr key={sample}>
            <th scope="row"><bdi>{sample}</bdi></th>
            <td data-head="Rank sum"><Figure value={sum} unit="count" decimals={Number.isInteger(sum) ? 0 : 1} /></td>
            <td data-head="Mean rank"><Figure value={sum / tasters} unit="count" decimals={1} /></td>
            <td data-head="Put where">{placesText(places)}</td>
          </tr>
        ))}
        {p === undefined ? null : (
          <tr class="note-row">
            <td colSpan={4}>
              All together, by Friedman’s test: {exact === true ? "exact" : "approximate"} p <Probability p={p} />.
              {ordered === undefined ? null : <> In the order fixed beforehand, by Page’s: {ordered.exact ? "exact" : "approximate"} p <Probability p={ordered.p} />, two-sided.</>}
              {leastDifference === undefined ? null : <> Two samples are told apart by sums <Figure value={leastDifference} unit="count" decimals={1} /> or more apart (ISO 8587; generous where there are many).</>}
            </td>
          </tr>
        )}
      </tbody>
    </table>
  );
}

/** `1st by 7, 2nd by 3`; a tie of two for the first place is rank 1.5. */
function placesText(places: RankSum["places"]): string {
  return places.map(({ rank, tasters }) => `${rankText(rank)} by ${tasters}`).join(", ");
}

function rankText(rank: number): string {
  if (!Number.isInteger(rank)) return `tied at ${Number(rank.toFixed(1))}`;
  return `${rank}${({ 1: "st", 2: "nd", 3: "rd" } as Readonly<Record<number, string>>)[rank] ?? "th"}`;
}
