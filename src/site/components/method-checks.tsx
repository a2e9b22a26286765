import type { MethodCheckView, MethodView } from "../method-view.js";
import { plainNumber } from "../text/plain-number.js";
import { Formula } from "./formula.js";
import { WideTable } from "./wide-table.js";

/** Values from outside the project that the relation must reproduce; the tests run every one. */
export function MethodChecks({ method }: { readonly method: MethodView }) {
  if (method.checks.length === 0) return null;
  return (
    <section>
      <h2>What it is checked against</h2>
      <WideTable label={`Check values of ${method.title}`}>
        <table class="method-checks">
          <thead><tr><th scope="col">Given</th><th scope="col">Must give</th><th scope="col">Within</th><th scope="col">Source of the value</th></tr></thead>
          <tbody>{method.checks.map((check, index) => <Row key={index} check={check} method={method} />)}</tbody>
        </table>
      </WideTable>
    </section>
  );
}

function Row({ check, method: { inputs, output } }: { readonly check: MethodCheckView; readonly method: MethodView }) {
  const named = check.given.length === inputs.length;
  return (
    <tr>
      <td>
        {check.given.map((value, index) => {
          const input = named ? inputs[index] : undefined;
          return <span key={index}>{index === 0 ? null : ", "}{input === undefined ? null : <><var><Formula text={input.symbol} /></var> = </>}{plainNumber(value)}{input === undefined ? null : unitAfter(input.unit)}</span>;
        })}
      </td>
      <td class="quantity">{check.part === undefined ? null : `${check.part} `}{plainNumber(check.gives)}{unitAfter(output.unit)}</td>
      <td class="quantity">{check.within === 0 ? "exactly" : `± ${plainNumber(check.within)}`}</td>
      <td>{check.source}</td>
    </tr>
  );
}

function unitAfter(unit: string): string {
  return unit === "" || unit === "SG" || unit === "count" ? "" : `\u00A0${unit}`;
}
