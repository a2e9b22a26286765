import type { TastingPlan, TestOption } from "../../report/index.js";
import { printedDate } from "../text/printed-date.js";
import { printedWords } from "../text/printed-words.js";
import { PaperPage } from "./paper-page.js";
import { ROUND_TITLES, STANDARDS } from "./round-words.js";

/** What is decided before anyone is invited: the question, the test, what it can find, and how to serve. */
export function PlanSheet({ plan, head }: { readonly plan: TastingPlan; readonly head: string }) {
  return (
      <PaperPage head={`${head}: for whoever runs it`} title={plan.name}>
        <p>
          {plan.date === undefined ? "No day is set. " : `${printedDate(plan.date)}. `}
          {plan.tasters === 1 ? "One taster" : `${plan.tasters} tasters`}. Poured:{" "}
          {plan.samples.map(({ name, drawnFrom }, index) => <span key={name}>{index === 0 ? null : ", "}<bdi>{drawnFrom}</bdi> as “<bdi>{name}</bdi>”</span>)}.{" "}
          Asked: {plan.asked === "similarity" ? "are they alike enough?" : "is there a difference?"}
        </p>
        {plan.filledIn.length === 0 ? null : <ul class="small">{plan.filledIn.map((line) => <li key={line}>{line}</li>)}</ul>}
        {plan.cautions.map((caution) => <p key={caution} class="caution"><b>Take care.</b> {caution}</p>)}
        <h2>Which test, and what it can find</h2>
        {plan.why.map((line) => <p key={line}>{line}</p>)}
        <Options plan={plan} />
        <Rounds plan={plan} />
        <NotAlike plan={plan} />
        <Drink plan={plan} />
        <Serving plan={plan} />
      </PaperPage>
  );
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function Options({ plan: { options, tasters } }: { readonly plan: TastingPlan }) {
  if (options.length === 0) return null;
  return (
    <>
      <table>
        <caption>What {tasters} tasters find with each test</caption>
        <thead>
          <tr><th scope="col">Test</th><th scope="col">Cups each</th><th scope="col">Must be right</th><th scope="col">Finds d′ 1</th><th scope="col">Finds d′ 2</th><th scope="col">Found 8 times in 10</th><th scope="col">Tasters for d′ 1</th></tr>
        </thead>
        <tbody>{options.map((option) => <OptionRow key={option.test} option={option} tasters={tasters} />)}</tbody>
      </table>
      <p class="small">
        d′ is how far apart two beers are in standard deviations of perception. At d′ 1, people asked outright which has more name the right one 76 times in 100; at d′ 2, 92 times.
        “Must be right”: the fewest right answers that guessing gives at most once in twenty tastings. “Tasters for d′ 1”: from so many on, d′ 1 is found 8 times in 10.
        Exact binomial power, by the methods of ASTM E2262; a model of tasters, not a promise.
      </p>
    </>
  );
}

function OptionRow({ option: { test, chosen, cups, needed, finds, detectable, enough, sides }, tasters }: { readonly option: TestOption; readonly tasters: number }) {
  return (
    <tr class={chosen ? "chosen" : undefined}>
      <th scope="row">{ROUND_TITLES[test]}, {STANDARDS[test]}{chosen ? " (chosen)" : null}</th>
      <td>{cups}</td>
      <td>{needed === undefined ? "never enough" : `${needed} of ${tasters}`}{sides === 2 ? ", either way" : null}</td>
      <td>{percent(finds.small)}</td>
      <td>{percent(finds.large)}</td>
      <td>{detectable === undefined ? "nothing" : `d′ ${detectable.toFixed(1)}`}</td>
      <td>{enough ?? "over 1000"}</td>
    </tr>
  );
}

/** What each taster is asked, round by round. */
function Rounds({ plan: { rounds, seed } }: { readonly plan: TastingPlan }) {
  return (
    <>
      <h2>What is asked</h2>
      <ol>
        {rounds.map(({ kind, attribute, attributes, preference, balanced, servings }) => (
          <li key={`${kind} ${attribute ?? ""}`}>
            {ROUND_TITLES[kind]}{attribute === undefined ? null : <>, <bdi>{attribute}</bdi></>}: {servings[0]?.cups.length} cups.
            {attributes.length === 0 ? null : <> Scored from 0 to 10: <bdi>{attributes.join(", ")}</bdi>.</>}
            {preference ? " Then which is liked better; “neither” is an answer and is never split." : null}
            {balanced ? " Every order is poured equally often." : " The number of tasters doesn’t divide by the number of orders: some orders are poured once more than others."}
          </li>
        ))}
      </ol>
      <p class="small">Orders and codes are drawn from the text “<bdi>{seed}</bdi>”: the same text draws the same again. Another one is drawn by <code>seed:</code> in the planned tasting.</p>
    </>
  );
}

function NotAlike({ plan: { notAlike } }: { readonly plan: TastingPlan }) {
  return (
    <section class="keep">
      <h2>Before it is poured: are the samples alike in all else?</h2>
      <p>A held-back sample that is flatter, older or warmer is no control. Put right what can be; what is left is written under <code>differs:</code> before the tasting, or <code>differs: []</code> if nothing is.{notAlike.length === 0 ? null : " What the record shows so far:"}</p>
      {notAlike.length === 0 ? null : <ul>{notAlike.map((line) => <li key={line}>{printedWords(line)}</li>)}</ul>}
    </section>
  );
}

function Drink({ plan: { contains, drink: { pourMl, cups, abv, alcoholG } } }: { readonly plan: TastingPlan }) {
  return (
    <section class="keep">
      <h2>What a taster drinks</h2>
      <p>
        {cups} cups of {pourMl} mL are {cups * pourMl} mL.{" "}
        {abv === undefined || alcoholG === undefined
          ? "How much alcohol that is can’t be said: the strength of a sample comes neither from readings nor from a plan. Settle it before pouring."
          : <>If nothing is spat out, that is {alcoholG.toFixed(1)} g of alcohol: the strongest has {abv.percent.toFixed(1)} % by volume (<bdi>{abv.batch}</bdi>, {abv.basis}).</>}
        {" "}Tell the tasters beforehand; add what else is drunk that evening.
      </p>
      <p>To be told beforehand: beer holds gluten, yeast and alcohol.{contains.length === 0 ? " What else is in it isn’t recorded." : <> As recorded, in these: <bdi>{contains.join(", ")}</bdi>.</>}</p>
    </section>
  );
}

function Serving({ plan: { rules } }: { readonly plan: TastingPlan }) {
  return (
    <>
      <h2>How to serve</h2>
      <ul class="to-tick">
        {rules.map(({ says, standard }) => <li key={says}><span class="box" /><span>{says} <span class="small">{standard ?? "Club practice"}.</span></span></li>)}
      </ul>
    </>
  );
}
