import type { AttributeReport, BatchReport, PreferenceReport } from "../../report/index.js";
import { Figure } from "./figure.js";

/** Attributes that a line has room for. */
const MOST_ATTRIBUTES = 3;

/** What a batch's tastings found, in one cell: how far attributes moved, which sample was preferred, whether the aim was met. */
export function TastersSaid({ batch: { tastings, aim } }: { readonly batch: BatchReport }) {
  const attributes = tastings.flatMap((tasting) => tasting.attributes).toSorted((one, other) => Number(other.primary) - Number(one.primary)).slice(0, MOST_ATTRIBUTES);
  const preferences = tastings.flatMap(({ preference }) => preference ?? []);
  if (attributes.length + preferences.length === 0) return <>{aim?.verdict ?? "not tasted"}</>;
  return (
    <>
      {attributes.map((attribute, index) => <Lift key={index} attribute={attribute} />)}
      {preferences.map((preference, index) => <Preferred key={index} preference={preference} />)}
      {aim === undefined ? null : <span class="row-note">{aim.verdict}</span>}
    </>
  );
}

function Lift({ attribute: { attribute, lift, low, high } }: { readonly attribute: AttributeReport }) {
  return (
    <span class="row-line">
      <bdi>{attribute}</bdi> {lift > 0 ? "+" : null}<Figure value={lift} unit="count" decimals={1} />
      {low === undefined || high === undefined ? null : <> (<Figure value={low} low={low} high={high} unit="count" decimals={1} />)</>}
    </span>
  );
}

function Preferred({ preference: { before, after, none } }: { readonly preference: PreferenceReport }) {
  return <span class="row-line">{after} of {before + after} preferred it after the hops{none === 0 ? null : `, ${none} neither`}</span>;
}
