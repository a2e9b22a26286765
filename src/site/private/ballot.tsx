import type { PlannedServing, TastingPlan, TastingRound } from "../../report/index.js";
import { printedDate } from "../text/printed-date.js";
import { PaperPage } from "./paper-page.js";
import { roundQuestion } from "./round-words.js";

/** One taster's page. It names neither the samples nor the aim. */
export function Ballot({ plan, place, head }: { readonly plan: TastingPlan; readonly place: number; readonly head: string }) {
  const taster = plan.rounds[0]?.servings[place]?.taster ?? "";
  return (
    <PaperPage head={plan.date === undefined ? head : `${head}, ${printedDate(plan.date)}`} title={`Taster ${taster}`}>
      <p class="small">
        <span class="box" />I take part of my own will and may stop at any cup. I am of age, know what is in the beer, and don’t drive today.
        You may spit. Water and a cracker before each cup. No talking until all have finished. Don’t go back to an earlier round.
      </p>
      {plan.rounds.map((round, index) => {
        const serving = round.servings[place];
        return serving === undefined ? null : <BallotRound key={index} round={round} serving={serving} number={index + 1} />;
      })}
      <p class="remarks">Anything else you noticed:</p>
    </PaperPage>
  );
}

function BallotRound({ round, serving, number }: { readonly round: TastingRound; readonly serving: PlannedServing; readonly number: number }) {
  return (
    <section class="keep">
      <h2>Round {number}</h2>
      <p>{roundQuestion(round)}</p>
      <Answer round={round} serving={serving} />
      {round.attributes.length === 0 ? null : <ScoreGrid round={round} serving={serving} />}
      {round.preference ? <Preference serving={serving} /> : null}
    </section>
  );
}

function Answer({ round: { kind }, serving: { cups } }: { readonly round: TastingRound; readonly serving: PlannedServing }) {
  if (kind === "scores") return null;
  if (kind === "tetrad") {
    return (
      <p class="answer">
        {cups.map(({ code }) => <span key={code} class="code">{code}</span>)}
        <span class="groups">One group: <span class="line" /> and <span class="line" /></span>
        <span class="groups">The other: <span class="line" /> and <span class="line" /></span>
        <Guess />
      </p>
    );
  }
  return (
    <p class="answer">
      {cups.map(({ code }, place) => (
        <span key={place}>{code === "R" ? null : kind === "ranking" ? <span class="line short" /> : <span class="box" />}<span class="code">{code}</span></span>
      ))}
      {kind === "ranking" ? null : <Guess />}
    </p>
  );
}

function Guess() {
  return <span><span class="box" />That was a guess</span>;
}

/** 0 to 10, as the record takes them. */
function ScoreGrid({ round: { attributes }, serving: { cups } }: { readonly round: TastingRound; readonly serving: PlannedServing }) {
  return (
    <>
      <p>Score each cup for each line, from 0 (none at all) to 10 (as strong as beer can have it). Halves are fine.</p>
      <table class="scores">
        <thead><tr><th scope="col" /> {cups.map(({ code }) => <th key={code} scope="col" class="code">{code}</th>)}</tr></thead>
        <tbody>
          {attributes.map((attribute) => (
            <tr key={attribute}><th scope="row"><bdi>{attribute}</bdi></th>{cups.map(({ code }) => <td key={code}><span class="line" /></td>)}</tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function Preference({ serving: { cups } }: { readonly serving: PlannedServing }) {
  return (
    <>
      <p>Last of all: which do you like better?</p>
      <p class="answer">{cups.map(({ code }) => <span key={code}><span class="box" /><span class="code">{code}</span></span>)}<span><span class="box" />neither</span></p>
    </>
  );
}
