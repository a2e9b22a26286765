import { figureEntry, type FigureReport, type FigureWorking, type ReadingShare, type WorkingStep } from "../../report/index.js";
import { useLink, usePage } from "../page/page-context.js";
import type { MethodView } from "../site-inputs.js";
import { printedFormula, sentence } from "../text/printed-words.js";
import { Figure } from "./figure.js";
import { MarginNote } from "./caution.js";
import { SourceName } from "./rests-on.js";

export interface WorkingProps {
  readonly working: FigureWorking;
  readonly figure: FigureReport | undefined;
  /** Figures worked out elsewhere on the page: linked, never told twice. */
  readonly told: ReadonlySet<string>;
}

/** How one figure came about: relation, inputs down to the readings, what its uncertainty rests on, source. */
export function Working({ working, figure, told }: WorkingProps) {
  const { methods } = usePage();
  const { id, step, shares } = working;
  const method = step.method === undefined ? undefined : methods.get(step.method);
  return (
    <section class="working" id={`working-${id}`}>
      {method === undefined ? null : <Source method={method} />}
      <h3>{figureEntry(id).title} <Figure {...step} /></h3>
      {method === undefined ? null : <p class="formula">{printedFormula(method.formula)}</p>}
      {step.says === undefined ? null : <p>{step.says}</p>}
      <Inputs of={step} told={told} />
      <Worth shares={shares} figure={figure} />
    </section>
  );
}

function Source({ method }: { readonly method: MethodView }) {
  const link = useLink();
  return (
    <MarginNote>
      <a href={link(`methods/${method.id}.html`)}>{method.title}</a>. {sentence(method.source)} <i>{sentence(method.status)}</i>
    </MarginNote>
  );
}

function Inputs({ of, told }: { readonly of: WorkingStep; readonly told: ReadonlySet<string> }) {
  const inputs = of.inputs ?? [];
  if (inputs.length === 0) return null;
  return (
    <ul class="inputs">
      {inputs.map((input, index) => <li key={index}><Input step={input} told={told} /></li>)}
    </ul>
  );
}

function Input({ step, told }: { readonly step: WorkingStep; readonly told: ReadonlySet<string> }) {
  const toldElsewhere = step.kind === "figure" && told.has(step.label);
  return (
    <>
      {step.symbol === undefined ? null : <><var>{step.symbol}</var> = </>}
      <Named step={step} toldElsewhere={toldElsewhere} />
      {toldElsewhere ? null : <Inputs of={step} told={told} />}
    </>
  );
}

function Named({ step, toldElsewhere }: { readonly step: WorkingStep; readonly toldElsewhere: boolean }) {
  const { path } = usePage();
  const working = toldElsewhere ? { working: `${path}#working-${step.label}` } : {};
  return (
    <>
      <Figure value={step.value} unit={step.unit} {...working} {...(step.plusMinus === undefined ? {} : { plusMinus: step.plusMinus })} />
      , <span class={`step-${step.kind}`}>{step.kind === "assumed" ? "assumed: " : null}<SourceName of={step.label} /></span>
      {step.written === undefined ? null : <>, written “<bdi>{step.written}</bdi>”</>}
      {step.says !== undefined ? <>. {step.says}</> : null}
      {toldElsewhere ? null : <By step={step} />}
    </>
  );
}

function By({ step }: { readonly step: WorkingStep }) {
  const { methods } = usePage();
  const link = useLink();
  const method = step.method === undefined ? undefined : methods.get(step.method);
  if (method === undefined) return null;
  return <>, by <a href={link(`methods/${method.id}.html`)}>{method.title.toLowerCase()}</a></>;
}

function Worth({ shares, figure }: { readonly shares: readonly ReadingShare[]; readonly figure: FigureReport | undefined }) {
  const told = shares.filter(({ share }) => share >= 0.01);
  return (
    <>
      {told.length === 0 ? null : (
        <p class="rests-on">
          Its uncertainty comes from{" "}
          {told.map(({ reading, share }, index) => (
            <span key={reading}>{index === 0 ? null : ", "}<SourceName of={reading} /> <Figure value={100 * share} unit="%" decimals={0} /></span>
          ))}
          {told.length > 1 ? "; improve the first to improve the figure." : "."}
        </p>
      )}
      {figure?.model === undefined ? null : (
        <p class="rests-on">The relation itself is worth ± <Figure value={figure.model} unit={figure.unit} /> beside that.</p>
      )}
    </>
  );
}
