import type { OutlookLine } from "../../report/index.js";
import { usePage } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import { methodPath } from "../views/working-path.js";
import { Caution } from "./caution.js";
import { Figure } from "./figure.js";

const BASIS: Readonly<Record<OutlookLine["basis"], string>> = {
  recipe: "from the recipe", "common practice": "by common practice", "this brewery": "from this brewery’s own batches",
};

/** What to prepare and what to expect, worked out before it happens, each with whose number it is. */
export function OutlookTable({ lines }: { readonly lines: readonly OutlookLine[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      {lines.map(({ id, caution }) => (caution === undefined ? null : <Caution key={id} says={caution} />))}
      <table class="outlook stack">
        <caption>What to prepare, and what to expect</caption>
        <thead>
          <tr><th scope="col">What</th><th scope="col">Expected</th></tr>
        </thead>
        <tbody>{lines.map((line) => <Line key={`${line.id} ${line.basis}`} line={line} />)}</tbody>
      </table>
    </>
  );
}

function Line({ line: { what, basis, says, ...expected } }: { readonly line: OutlookLine }) {
  const words = useWords();
  return (
    <>
      <tr>
        <th scope="row">{words(what)}<span class="detail">, {BASIS[basis]}</span></th>
        <td data-head="Expected"><Expected {...expected} /></td>
      </tr>
      <tr class="note-row"><td colspan={2}>{words(says)}</td></tr>
    </>
  );
}

function Expected({ value, low, high, unit, method }: Pick<OutlookLine, "value" | "low" | "high" | "unit" | "method">) {
  const { methods } = usePage();
  const working = methodPath(methods, method);
  const band = low === undefined || high === undefined ? undefined : { low, high };
  if (value === undefined) return band === undefined ? <>not yet</> : <Figure value={band.low} {...band} unit={unit} basis="planned" working={working} />;
  return (
    <>
      <Figure value={value} unit={unit} basis="planned" working={working} />
      {band === undefined ? null : <span class="row-note">from <Figure value={band.low} {...band} unit={unit} basis="planned" /></span>}
    </>
  );
}
