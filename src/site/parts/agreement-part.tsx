import type { AgreementReport, CompetitionReport, EstimateReport, SeverityReport } from "../../report/index.js";
import { Probability } from "../components/figure.js";
import { WideTable } from "../components/wide-table.js";
import { printedPoints } from "../text/printed-points.js";

export interface AgreementProps {
  readonly agreement: AgreementReport;
  readonly competition: CompetitionReport;
}

/** How far the judges of one flight agreed before they talked. */
export function AgreementPart({ agreement, competition: { agreeWithin, entries } }: AgreementProps) {
  const { single, average, concordance, pairs, says, apartEntries = [], judges } = agreement;
  const titles = new Map(entries.map(({ entry, title }) => [entry, title ?? `entry ${entry}`]));
  return (
    <>
      <h3>How far the judges agreed</h3>
      <p>{says}{apartEntries.length === 0 ? null : <> Far apart: {apartEntries.map((entry, index) => <span key={entry}>{index === 0 ? null : ", "}<bdi>{titles.get(entry)}</bdi></span>)}.</>}</p>
      <ul class="measures">
        {single === undefined ? null : <li>One judge’s score, intraclass correlation: <Estimate {...single} /></li>}
        {average === undefined ? null : <li>The mean of these {judges} judges: <Estimate {...average} /></li>}
        {concordance === undefined ? null : <li>Order alone, Kendall’s W: <span class="number">{correlation(concordance.w)}</span>, where judges ranking at random give <span class="number">{correlation(concordance.chance)}</span> on average; p <Probability p={concordance.p} /></li>}
      </ul>
      <details>
        <summary>The judges pair by pair</summary>
        <WideTable label="Pairs of judges">
          <table class="judge-pairs">
            <caption>Pairs of judges, before they talked</caption>
            <thead>
              <tr><th scope="col">Judges</th><th scope="col">First less second, mean</th><th scope="col">Apart, mean</th><th scope="col">Apart, most</th><th scope="col">Within {printedPoints(agreeWithin)} points</th></tr>
            </thead>
            <tbody>
              {pairs.map(({ judges: [first, second], entries: shared, meanDifference, meanApart, mostApart, within }) => (
                <tr key={`${first} ${second}`}>
                  <th scope="row"><bdi>{first}</bdi> and <bdi>{second}</bdi></th>
                  <td>{printedPoints(meanDifference)}</td><td>{printedPoints(meanApart)}</td><td>{printedPoints(mostApart)}</td><td>{within} of {shared}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </WideTable>
      </details>
    </>
  );
}

function Estimate({ value, low, high }: EstimateReport) {
  return (
    <>
      <span class="number">{correlation(value)}</span>
      {low === undefined || high === undefined ? null : <>, 95 % interval <span class="number">{correlation(low)}</span> to <span class="number">{correlation(high)}</span></>}
    </>
  );
}

function correlation(value: number): string {
  return value.toFixed(2).replace("-", "−");
}

/** Judges' severity where the flights are linked, or why it isn't told. */
export function SeverityPart({ severity }: { readonly severity: SeverityReport }) {
  return (
    <section id="severity">
      <h2>Severe and lenient judges</h2>
      <p>{severity.says}</p>
      {severity.judges.length === 0 ? null : (
        <table class="severity">
          <caption>Points against the average judge{severity.p === undefined ? null : <>; all judges alike: p <Probability p={severity.p} /></>}</caption>
          <thead><tr><th scope="col">Judge</th><th scope="col">Points above or below, ± at 95 %</th><th scope="col">Sheets</th></tr></thead>
          <tbody>
            {severity.judges.map(({ judge, severity: points, plusMinus, sheets }) => (
              <tr key={judge}><th scope="row"><bdi>{judge}</bdi></th><td><span class="number">{points > 0 ? "+" : ""}{printedPoints(points)} ± {printedPoints(plusMinus)}</span></td><td>{sheets}</td></tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
