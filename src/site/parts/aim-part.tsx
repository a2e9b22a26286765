import type { AimAttribute, AimReport } from "../../report/index.js";
import { Cautions, MarginNote } from "../components/caution.js";
import { CheckList } from "../components/check-list.js";
import { Figure } from "../components/figure.js";
import { OutlookTable } from "../components/outlook-table.js";
import { StyleTargets } from "../components/style-targets.js";
import { sentence } from "../text/printed-words.js";
import { checksOf } from "../views/part-checks.js";
import type { BatchView } from "./batch-view.js";
import { Part } from "./part.js";

/** What the brewer set out to do, decided before tasting, and how it turned out. */
export function AimPart({ view: { report } }: { readonly view: BatchView }) {
  return (
    <Part id="aim">
      {report.aim === undefined ? (
        <p>No aim is recorded. Written before the tasting under <code>aim</code>, it says what this batch was meant to do, and the page says whether it did.</p>
      ) : <Aim aim={report.aim} />}
      <Cautions of={report} part="aim" />
      <OutlookTable lines={report.outlook} />
      <StyleTargets rows={report.styleRows} style={report.style ?? "the style"} missing={report.missing} />
      <CheckList checks={checksOf(report, "aim")} />
    </Part>
  );
}

function Aim({ aim }: { readonly aim: AimReport }) {
  return (
    <>
      {aim.words === undefined ? null : <blockquote class="aim-words" dir="auto"><p>{aim.words}</p></blockquote>}
      {(aim.attributes ?? []).length === 0 ? <><p class="aim-verdict">{aim.verdict}</p><Wanted aim={aim} /></> : null}
      {aim.margin === undefined || (aim.attributes ?? []).length === 0 ? null : (
        <MarginNote>Decided before the tasting: a move of at least <Figure value={aim.margin} unit="count" decimals={1} /> on the scale 0 to 10 counts as one, and a smaller one as held.</MarginNote>
      )}
      <Attributes attributes={aim.attributes ?? []} />
    </>
  );
}

/** One verdict an attribute, with the sentence that says why. */
function Attributes({ attributes }: { readonly attributes: readonly AimAttribute[] }) {
  if (attributes.length === 0) return null;
  return (
    <ul class="checks">
      {attributes.map(({ attribute, want, result, says }) => (
        <li key={`${want} ${attribute}`}>
          <b class={`verdict verdict-${result === "met" ? "pass" : result === "not met" ? "fail" : "unknown"}`}>{result}</b>
          <div><p>{sentence(says)}</p></div>
        </li>
      ))}
    </ul>
  );
}

function Wanted({ aim: { raise, lower, hold, primary, margin } }: { readonly aim: AimReport }) {
  const wanted = [["To raise", raise], ["To lower", lower], ["To hold", hold]] as const;
  const told = wanted.filter(([, attributes]) => attributes.length > 0);
  if (told.length === 0 && primary === undefined && margin === undefined) return null;
  return (
    <p class="wanted">
      {told.map(([title, attributes]) => <span key={title}><i>{title}:</i> <bdi>{attributes.join(", ")}</bdi>. </span>)}
      {primary === undefined ? null : <><i>First of all:</i> <bdi>{primary}</bdi>. </>}
      {margin === undefined ? null : <>A move of at least <Figure value={margin} unit="count" decimals={1} /> on the scale 0 to 10 counts as one.</>}
    </p>
  );
}
