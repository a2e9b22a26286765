import type { WorkingStep } from "../../report/index.js";
import { useLink, usePage } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import { lowerFirst } from "../text/printed-words.js";
import { isSum, type WorkingIndex } from "../views/working-index.js";
import { Figure } from "./figure.js";
import { Formula } from "./formula.js";
import { SourceName } from "./rests-on.js";

export interface WorkingInputsProps {
  readonly of: WorkingStep;
  /** The figure whose working this is. */
  readonly inside: string;
  readonly index: WorkingIndex;
}

/** What went into a step, one line each; what went into those is folded under them, down to the readings. */
export function WorkingInputs({ of, inside, index }: WorkingInputsProps) {
  const inputs = of.inputs ?? [];
  if (inputs.length === 0) return null;
  const sum = isSum(of);
  return (
    <ul class="inputs">
      {inputs.map((input, place) => <li key={place}><Input step={sum ? withoutSymbol(input) : input} inside={inside} index={index} /></li>)}
    </ul>
  );
}

/** The parts of a sum have no symbol in the relation that each of them comes from. */
function withoutSymbol({ symbol: _symbol, ...step }: WorkingStep): WorkingStep {
  return step;
}

function Input({ step, inside, index }: { readonly step: WorkingStep; readonly inside: string; readonly index: WorkingIndex }) {
  const { path } = usePage();
  const figure = index.figureOf(step, inside);
  if (figure !== undefined) return <Line step={step} working={`${path}#working-${figure}`} />;
  if ((step.inputs ?? []).length === 0) return <Line step={step} />;
  return (
    <details>
      <summary><Line step={step} /></summary>
      <By step={step} />
      <WorkingInputs of={step} inside={inside} index={index} />
    </details>
  );
}

function Line({ step, working }: { readonly step: WorkingStep; readonly working?: string }) {
  const words = useWords();
  const { symbol, value, unit, plusMinus, label, kind, written, says } = step;
  return (
    <>
      {symbol === undefined ? null : <><var><Formula text={symbol} /></var> = </>}
      <Figure value={value} unit={unit} working={working} {...(plusMinus === undefined ? {} : { plusMinus })} />
      {", "}
      <span class={`step-${kind}`}>
        {kind === "assumed" ? "assumed: " : null}
        {kind === "step" ? words(lowerFirst(label)) : <SourceName of={label} />}
      </span>
      {written === undefined ? null : <>, written “<bdi>{written}</bdi>”</>}
      {says === undefined ? null : <>. {words(says)}</>}
    </>
  );
}

/** The relation of a folded step, with the page that tells it. */
function By({ step }: { readonly step: WorkingStep }) {
  const words = useWords();
  const { methods } = usePage();
  const link = useLink();
  const method = step.method === undefined ? undefined : methods.get(step.method);
  if (method === undefined) return null;
  return <p class="rests-on">By <a href={link(`methods/${method.id}.html`)}>{words(lowerFirst(method.title))}</a>: <i><Formula text={method.formula} /></i></p>;
}
