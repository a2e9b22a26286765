import { figureEntry, type FigureReport, type FigureWorking, type ReadingShare } from "../../report/index.js";
import { useLink, usePage } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import type { MethodView } from "../method-view.js";
import { sentence } from "../text/printed-words.js";
import { isSum, type WorkingIndex } from "../views/working-index.js";
import { MarginNote } from "./caution.js";
import { Figure } from "./figure.js";
import { Formula } from "./formula.js";
import { SourceName } from "./rests-on.js";
import { WorkingInputs } from "./working-inputs.js";

export interface WorkingProps {
  readonly working: FigureWorking;
  readonly figure: FigureReport | undefined;
  readonly index: WorkingIndex;
}

/** How one figure came about, folded until it is asked for: relation, inputs down to the readings, what its uncertainty rests on, source. */
export function Working({ working: { id, step, shares }, figure, index }: WorkingProps) {
  const words = useWords();
  const { methods } = usePage();
  const method = step.method === undefined ? undefined : methods.get(step.method);
  return (
    <details class="working" id={`working-${id}`}>
      <summary><h3>{figureEntry(id).title}</h3> <Figure {...step} /></summary>
      {method === undefined ? null : <Source method={method} />}
      {method === undefined ? null : <p class="formula">{isSum(step) ? "The sum of these, each by the relation beside: " : null}<Formula text={method.formula} /></p>}
      {step.written === undefined ? null : <p class="rests-on">Read, and written “<bdi>{step.written}</bdi>”.</p>}
      {step.says === undefined ? null : <p>{words(step.says)}</p>}
      <WorkingInputs of={step} inside={id} index={index} />
      <Worth shares={shares} figure={figure} />
    </details>
  );
}

function Source({ method }: { readonly method: MethodView }) {
  const words = useWords();
  const link = useLink();
  return (
    <MarginNote>
      <a href={link(`methods/${method.id}.html`)}>{words(method.title)}</a>. {words(sentence(method.source))} <i>{sentence(method.status)}</i>
    </MarginNote>
  );
}

/** A share of the uncertainty under this isn't worth a brewer's while. */
const LEAST_SHARE = 0.01;

function Worth({ shares, figure }: { readonly shares: readonly ReadingShare[]; readonly figure: FigureReport | undefined }) {
  const told = shares.filter(({ share }) => share >= LEAST_SHARE);
  if (told.length === 0 && figure?.model === undefined) return null;
  return (
    <p class="rests-on">
      {told.length === 0 ? null : <>Its uncertainty comes from <Shares shares={told} />. </>}
      {figure?.model === undefined ? null : <>The relation itself is worth ± <Figure value={figure.model} unit={figure.unit} /> beside that.</>}
    </p>
  );
}

function Shares({ shares }: { readonly shares: readonly ReadingShare[] }) {
  return (
    <>
      {shares.map(({ reading, share }, index) => (
        <span key={reading}>{index === 0 ? null : ", "}<SourceName of={reading} /> <Figure value={100 * share} unit="%" decimals={0} /></span>
      ))}
    </>
  );
}
