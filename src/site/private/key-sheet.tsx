import type { TastingPlan, TastingRound } from "../../report/index.js";
import { PaperPage } from "./paper-page.js";
import { ROUND_TITLES } from "./round-words.js";
import { resultToWrite } from "./result-to-write.js";

/** The key, behind a cover to fold over it: what each code was, what is right, and how to write it down. */
export function KeySheet({ plan, head }: { readonly plan: TastingPlan; readonly head: string }) {
  return (
    <>
      <PaperPage head={`${head}: sealed`} title={`Key: ${plan.name}`}>
        <p class="seal"><b>Not to be read until the last ballot is in.</b> Fold the pages behind this one into it, print inside, and tape it shut. Whoever opens it earlier neither serves, tastes nor counts.</p>
        <p>Sealed by <span class="line" /> on <span class="line" /></p>
        <p>Opened by <span class="line" /> on <span class="line" /></p>
      </PaperPage>
      <PaperPage head={`${head}: sealed`} title={`Key: ${plan.name}`}>
        {plan.rounds.map((round, index) => <RoundKey key={index} round={round} number={index + 1} tasters={plan.tasters} />)}
      </PaperPage>
      <PaperPage head={`${head}: sealed`} title="How to write it down">
        <p>In the record’s front matter under <code>tastings:</code>, in the place of the planned one. Write the counts where the dots are, and leave out what wasn’t asked. If somebody left or a cup went wrong, give the test <code>tasters:</code> of its own.</p>
        <pre>{resultToWrite(plan)}</pre>
        <p>The scores go into a file beside the record, one row a score, with the names of the samples and not the codes. A row to begin with:</p>
        <pre>{`taster,sample,attribute,score\n${plan.rounds[0]?.servings[0]?.taster ?? "T01"},${plan.samples[0]?.name ?? "before"},${plan.rounds.flatMap(({ attributes }) => attributes)[0] ?? "aroma"},`}</pre>
        <p>A taster’s name stays on the ballot: the record and the page know codes only. Keep the ballots until the page is built and looked at.</p>
      </PaperPage>
    </>
  );
}

function RoundKey({ round, number, tasters }: { readonly round: TastingRound; readonly number: number; readonly tasters: number }) {
  const { kind, attribute, servings, preference } = round;
  const hasRight = servings.some(({ right }) => right !== undefined);
  const names = [...new Set(servings.flatMap(({ cups }) => cups.map(({ sample }) => sample)))].toSorted();
  const answers = kind === "pair" ? names : preference ? [...names, "neither"] : [];
  return (
    <>
      <table class="codes">
        <caption>Round {number}: {ROUND_TITLES[kind]}{attribute === undefined ? null : <>, <bdi>{attribute}</bdi></>}</caption>
        <thead>
          <tr>
            <th scope="col">Taster</th><th scope="col">Cups from left to right</th>
            {hasRight ? <><th scope="col">Right is</th><th scope="col">Was right</th></> : null}
            {answers.length === 0 ? null : <th scope="col">{preference ? "Liked better" : "Named"}</th>}
          </tr>
        </thead>
        <tbody>
          {servings.map(({ taster, cups, right }) => (
            <tr key={taster}>
              <th scope="row">{taster}</th>
              <td>{cups.map(({ code, sample }, place) => <span key={place} class="cup"><span class="code">{code}</span> <bdi>{sample}</bdi></span>)}</td>
              {hasRight ? <><td class="code">{right}</td><td><span class="box" /></td></> : null}
              {answers.length === 0 ? null : <td>{answers.map((answer) => <span key={answer} class="cup"><span class="box" /><bdi>{answer}</bdi></span>)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
      <Needed round={round} tasters={tasters} />
    </>
  );
}

/** How many it takes, beside the place to write how many there were. */
function Needed({ round: { kind, needed, hoped }, tasters }: { readonly round: TastingRound; readonly tasters: number }) {
  if (kind === "scores" || kind === "ranking") return null;
  const counted = kind !== "pair" ? "Right" : hoped === undefined ? "Named more often" : `Named ${hoped}`;
  return <p><bdi>{counted}</bdi>: <span class="line short" /> of {tasters}. {needed === undefined ? "With so few, no count shows a difference." : `${needed} or more show ${kind === "pair" ? "that it has more" : "a difference"}.`}</p>;
}
