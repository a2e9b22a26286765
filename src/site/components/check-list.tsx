import type { CheckReport, Verdict as VerdictWord } from "../../report/index.js";
import { Caution } from "./caution.js";
import { RestsOn } from "./rests-on.js";
import { useWords } from "../page/use-words.js";

/** A quiet mark beside the word, as a printer marks a note; never the only sign. */
const MARK: Readonly<Record<VerdictWord, string>> = { pass: "", watch: "†", fail: "‡", unknown: "?" };

const AGAINST: Readonly<Record<CheckReport["against"], string>> = {
  plan: "By the plan",
  "common practice": "By common practice",
  record: "By the record",
  style: "By the style",
};

export function Verdict({ word }: { readonly word: VerdictWord }) {
  return (
    <b class={`verdict verdict-${word}`}>
      {word}
      {MARK[word] === "" ? null : <span class="mark" aria-hidden="true">{MARK[word]}</span>}
    </b>
  );
}

/** Checks with their verdict as a word, what was found in plain words, and what it was held against. */
export function CheckList({ checks }: { readonly checks: readonly CheckReport[] }) {
  const words = useWords();
  if (checks.length === 0) return null;
  return (
    <ul class="checks">
      {checks.map((check) => (
        <li key={check.id} id={`check-${check.id}`}>
          <Verdict word={check.verdict} />
          <div>
            {check.caution === undefined ? null : <Caution says={check.caution} />}
            <p>
              <b>{check.title}.</b> {words(check.says)}{" "}
              <span class="rests-on">{AGAINST[check.against]}{check.from.length === 0 ? "." : "; "}<RestsOn from={check.from} /></span>
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}
