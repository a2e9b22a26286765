import type { TastingPlan, TastingRound } from "../../report/index.js";
import { PaperPage } from "./paper-page.js";
import { ROUND_TITLES } from "./round-words.js";

/** Which sample goes into which cup. One table a round; cups stand from left to right as the taster finds them. */
export function PouringSheet({ plan, head }: { readonly plan: TastingPlan; readonly head: string }) {
  return (
    <PaperPage head={`${head}: for the pourer only`} title={`Pouring: ${plan.name}`}>
      <p>
        Write the codes on the cups, then pour {plan.drink.pourMl} mL into each, sample by sample, at one temperature.
        Set each taster’s cups out from left to right, round by round; clear a round before the next. Who has read this sheet neither serves nor tastes.
      </p>
      {plan.cautions.map((caution) => <p key={caution} class="caution"><b>Take care.</b> {caution}</p>)}
      <Need plan={plan} />
      {plan.rounds.map((round, index) => <RoundTable key={index} round={round} number={index + 1} />)}
    </PaperPage>
  );
}

/** How much of each sample it takes. */
function Need({ plan: { samples, rounds, drink } }: { readonly plan: TastingPlan }) {
  const poured = rounds.flatMap(({ servings }) => servings.flatMap(({ cups }) => cups));
  return (
    <table class="narrow">
      <thead><tr><th scope="col">Sample</th><th scope="col">From</th><th scope="col">Cups</th><th scope="col">At least</th></tr></thead>
      <tbody>
        {samples.map(({ name, drawnFrom }) => {
          const cups = poured.filter(({ sample }) => sample === name).length;
          return <tr key={name}><th scope="row"><bdi>{name}</bdi></th><td><bdi>{drawnFrom}</bdi></td><td>{cups}</td><td>{((cups * drink.pourMl) / 1000).toFixed(1)} L</td></tr>;
        })}
      </tbody>
    </table>
  );
}

function RoundTable({ round, number }: { readonly round: TastingRound; readonly number: number }) {
  const places = round.servings[0]?.cups.length ?? 0;
  return (
    <table class="codes">
      <caption>Round {number}: {ROUND_TITLES[round.kind]}{round.attribute === undefined ? null : <>, <bdi>{round.attribute}</bdi></>}</caption>
      <thead>
        <tr><th scope="col">Taster</th>{Array.from({ length: places }, (_, place) => <th key={place} scope="col">{place === 0 ? "Leftmost" : place === places - 1 ? "Rightmost" : `Place ${place + 1}`}</th>)}<th scope="col">Set out</th></tr>
      </thead>
      <tbody>
        {round.servings.map(({ taster, cups }) => (
          <tr key={taster}>
            <th scope="row">{taster}</th>
            {cups.map(({ code, sample }, place) => <td key={place}><span class="code">{code}</span> <bdi>{sample}</bdi></td>)}
            <td><span class="box" /></td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
