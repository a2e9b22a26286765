import type { LedgerDestination, LedgerEntry, LedgerReport } from "../../report/index.js";
import { shortDate } from "../text/printed-date.js";
import { Figure } from "./figure.js";
import { useWords } from "../page/use-words.js";

const DESTINATION: Readonly<Record<LedgerDestination, string>> = {
  samples: "Sample", dumps: "Dumped", left: "Left in the vessel", package: "Packaged", unaccounted: "Unaccounted",
};

/** Every litre that went in, and where it went. */
export function LedgerTable({ ledger }: { readonly ledger: LedgerReport }) {
  const words = useWords();
  return (
    <table class="ledger stack">
      <caption>{words("Beer at 20 °C, and where it went")}</caption>
      <thead>
        <tr><th scope="col">Where</th><th scope="col">Volume</th><th scope="col">Share</th></tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">Into the fermenter</th>
          <td data-head="Volume"><Figure value={ledger.into} unit="L" {...limits(ledger.intoPlusMinus)} /></td>
          <td data-head="Share"><Figure value={100} unit="%" /></td>
        </tr>
        {ledger.entries.map((entry, index) => <Row key={index} entry={entry} into={ledger.into} />)}
      </tbody>
    </table>
  );
}

function Row({ entry, into }: { readonly entry: LedgerEntry; readonly into: number }) {
  return (
    <tr class={`to-${entry.to}`}>
      <th scope="row">
        {DESTINATION[entry.to]}
        {entry.what === undefined || DESTINATION[entry.to].endsWith(entry.what) ? null : <span class="detail">, <bdi>{shortDate(entry.what)}</bdi></span>}
      </th>
      <td data-head="Volume"><Figure value={entry.litres} unit="L" {...limits(entry.plusMinus)} /></td>
      <td data-head="Share">{into > 0 ? <Figure value={(100 * entry.litres) / into} unit="%" /> : "–"}</td>
    </tr>
  );
}

function limits(plusMinus: number | undefined): { readonly plusMinus?: number } {
  return plusMinus === undefined ? {} : { plusMinus };
}
