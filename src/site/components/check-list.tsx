import type { CheckReport, Verdict as VerdictWord } from "../../report/index.js";
import { lowerFirst } from "../text/printed-words.js";
import { Caution } from "./caution.js";
import { RestsOn } from "./rests-on.js";
import { useLink, usePage } from "../page/page-context.js";
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
              <span class="rests-on">{AGAINST[check.against]}{check.from.length === 0 ? "." : "; "}<RestsOn from={check.from} /><WorkedBy methods={check.methods ?? []} /></span>
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}

/** The relations behind numbers that stand in a check's sentence alone: their pages give range and source. */
function WorkedBy({ methods }: { readonly methods: readonly string[] }) {
  const known = usePage().methods;
  const link = useLink();
  const told = methods.flatMap((id) => known.get(id) ?? []);
  if (told.length === 0) return null;
  return <> By {told.map(({ id, title }, index) => <span key={id}>{index === 0 ? null : ", "}<a href={link(`methods/${id}.html`)}>{lowerFirst(title)}</a></span>)}.</>;
}
