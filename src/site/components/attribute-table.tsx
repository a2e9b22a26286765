import type { AttributeReport } from "../../report/index.js";
import { Figure, Probability } from "./figure.js";

/** What moved, on the 0–10 scale, the attribute named beforehand first. */
export function AttributeTable({ attributes }: { readonly attributes: readonly AttributeReport[] }) {
  if (attributes.length === 0) return null;
  const ordered = [...attributes.filter(({ primary }) => primary), ...attributes.filter(({ primary }) => !primary)];
  return (
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
