import type { CountReport, PairReport, TastingReport } from "../../report/index.js";
import type { ComponentChildren } from "preact";
import { useWords } from "../page/use-words.js";
import { printedDate } from "../text/printed-date.js";
import { AttributeTable } from "./attribute-table.js";
import { Caution, MarginNote } from "./caution.js";
import { Figure, Probability } from "./figure.js";
import { PanelTable } from "./panel-table.js";
import { RankingTable } from "./ranking-table.js";

/** One tasting: how it was run, what can be concluded, then the counts that stand behind the words. */
export function Tasting({ tasting, pictures }: { readonly tasting: TastingReport; readonly pictures: ComponentChildren }) {
  const words = useWords();
  return (
    <>
      <MarginNote><Run tasting={tasting} /></MarginNote>
      {(tasting.cautions ?? []).map((caution) => <Caution key={caution} says={caution} />)}
      <h3><bdi>{tasting.name}</bdi></h3>
      <div class="findings">{tasting.says.map((sentence) => <p key={sentence}>{sentence}</p>)}</div>
      {tasting.differs.length === 0 ? null : (
        <ul class="differs">{tasting.differs.map((difference) => <li key={difference}>{words(difference)}</li>)}</ul>
      )}
      {pictures}
      <CountTable tasting={tasting} />
      <RankingTable ranking={tasting.ranking} />
      <AttributeTable attributes={tasting.attributes} />
      <PanelTable panel={tasting.panel} />
    </>
  );
}

function Run({ tasting }: { readonly tasting: TastingReport }) {
  return (
    <>
      {tasting.date === undefined ? "Date not recorded. " : `${printedDate(tasting.date)}. `}
      {tasting.tasters === undefined ? "Number of tasters not recorded. " : `${tasting.tasters} tasters. `}
      Poured:{" "}
      {Object.entries(tasting.samples).map(([role, sample], index) => (
        <span key={role}>{index === 0 ? null : ", "}<bdi>{sample}</bdi> as “<bdi>{role}</bdi>”</span>
      ))}.
      {tasting.asked === undefined ? null : ` Asked beforehand: ${tasting.asked}.`}
    </>
  );
}

/** Tests by count in the order they are told. */
const TESTS = [["triangle", "Triangle"], ["tetrad", "Tetrad"], ["duoTrio", "Duo-trio"]] as const;

function CountTable({ tasting }: { readonly tasting: TastingReport }) {
  const counts: readonly { readonly title: string; readonly count: CountReport }[] = [
    ...TESTS.flatMap(([test, title]) => {
      const count = tasting[test];
      return count === undefined ? [] : [{ title, count }];
    }),
    ...pairsOf(tasting).map((pair) => ({ title: `Pair: ${pair.attribute}`, count: pair })),
  ];
  if (counts.length === 0 && tasting.preference === undefined) return null;
  return (
    <table class="counts stack">
      <caption>Counts, with the chance of as many by guessing</caption>
      <thead>
        <tr><th scope="col">Test</th><th scope="col">Found</th><th scope="col">Share, 95 % interval</th><th scope="col">p</th></tr>
      </thead>
      <tbody>
        {counts.map(({ title, count }) => <CountRow key={title} title={title} count={count} />)}
        {tasting.preference === undefined ? null : <PreferenceRow votes={tasting.preference} />}
      </tbody>
    </table>
  );
}

function pairsOf({ pairs, pair }: TastingReport): readonly PairReport[] {
  return pairs ?? (pair === undefined ? [] : [pair]);
}

function CountRow({ title, count }: { readonly title: string; readonly count: CountReport }) {
  return (
    <tr>
      <th scope="row">{title}<span class="row-note">by guessing <Figure value={100 * count.chance} unit="%" decimals={0} /></span></th>
      <td data-head="Found">{count.correct} of {count.tasters}</td>
      <td data-head="Share"><Share {...count} /></td>
      <td data-head="p"><Probability p={count.p} /></td>
    </tr>
  );
}

function Share({ share, low, high }: { readonly share: number; readonly low: number; readonly high: number }) {
  return (
    <>
      <Figure value={100 * share} unit="%" decimals={0} /> (<Figure value={100 * low} low={100 * low} high={100 * high} unit="%" decimals={0} />)
    </>
  );
}

function PreferenceRow({ votes }: { readonly votes: NonNullable<TastingReport["preference"]> }) {
  return (
    <tr>
      <th scope="row">Preference<span class="row-note">votes for neither are never split</span></th>
      <td data-head="Votes">after {votes.after}, before {votes.before}, neither {votes.none}</td>
      <td data-head="Share">{votes.share === undefined || votes.low === undefined || votes.high === undefined ? "–" : <Share share={votes.share} low={votes.low} high={votes.high} />}</td>
      <td data-head="p"><Probability p={votes.p} /></td>
    </tr>
  );
}
