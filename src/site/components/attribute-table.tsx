import type { AttributeReport } from "../../report/index.js";
import { Figure, Probability } from "./figure.js";
import { WideTable } from "./wide-table.js";

/** What moved, on the 0–10 scale, the attribute named beforehand first. */
export function AttributeTable({ attributes }: { readonly attributes: readonly AttributeReport[] }) {
  if (attributes.length === 0) return null;
  const ordered = [...attributes.filter(({ primary }) => primary), ...attributes.filter(({ primary }) => !primary)];
  return (
    <>
      <table class="attributes stack">
        <caption>Mean scores on the scale 0 to 10, and how far they moved</caption>
        <thead>
          <tr>
            <th scope="col">Attribute</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
            <th scope="col">Moved, 95 % interval</th>
            <th scope="col">p, the others allowed for</th>
          </tr>
        </thead>
        <tbody>{ordered.map((attribute) => <Row key={attribute.attribute} attribute={attribute} />)}</tbody>
      </table>
      <TasterScores attributes={ordered} />
    </>
  );
}

function Row({ attribute: { attribute, primary, tasters, meanBefore, meanAfter, lift, low, high, p, adjusted, raised, lowered } }: { readonly attribute: AttributeReport }) {
  return (
    <tr>
      <th scope="row"><bdi>{attribute}</bdi><span class="row-note">{primary ? "named beforehand, " : null}{tasters} tasters{raised === undefined || lowered === undefined ? null : `, ${raised} higher, ${lowered} lower`}</span></th>
      <td data-head="Before"><Figure value={meanBefore} unit="count" decimals={1} /></td>
      <td data-head="After"><Figure value={meanAfter} unit="count" decimals={1} /></td>
      <td data-head="Moved">
        <Figure value={lift} unit="count" decimals={1} />
        {low === undefined || high === undefined ? null : <> (<Figure value={low} low={low} high={high} unit="count" decimals={1} />)</>}
      </td>
      <td data-head="p">{p === undefined ? "–" : <Probability p={adjusted ?? p} />}</td>
    </tr>
  );
}

/** Every taster's own points, since a mean can hide two camps. */
function TasterScores({ attributes }: { readonly attributes: readonly AttributeReport[] }) {
  const tasters = [...new Set(attributes.flatMap(({ pairs }) => pairs.map(([taster]) => taster)))];
  return (
    <details>
      <summary>Every taster’s own scores</summary>
      <WideTable label="Every taster’s own scores">
        <table class="numbers">
          <thead><tr><th scope="col">Taster</th>{attributes.map(({ attribute }) => <th key={attribute} scope="col"><bdi>{attribute}</bdi></th>)}</tr></thead>
          <tbody>
            {tasters.map((taster) => (
              <tr key={taster}>
                <th scope="row"><bdi>{taster}</bdi></th>
                {attributes.map(({ attribute, pairs }) => <td key={attribute}><PairCell pair={pairs.find(([own]) => own === taster)} /></td>)}
              </tr>
            ))}
          </tbody>
        </table>
      </WideTable>
      <p>Before, then after; means where servings repeat.</p>
    </details>
  );
}

function PairCell({ pair }: { readonly pair: AttributeReport["pairs"][number] | undefined }) {
  if (pair === undefined) return <>–</>;
  const [, before, after] = pair;
  return <><Figure value={before} unit="count" decimals={1} /> → <Figure value={after} unit="count" decimals={1} /></>;
}
