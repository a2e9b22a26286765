import type { ComponentChildren } from "preact";
import type { DryHopReport } from "../../report/index.js";
import { useLink } from "../page/page-context.js";
import { shortDate } from "../text/printed-date.js";
import { Figure } from "./figure.js";
import { WideTable } from "./wide-table.js";

/** What the figures of the whole dry hop already tell when there is but one addition. */
const TOLD_TOGETHER = new Set(["Amount", "Dose", "Contact", "Temperature in contact, mean"]);

/** One row a quantity, one column an addition: seldom more than three, so it stays narrow. */
const ROWS: readonly (readonly [title: string, key: keyof DryHopReport, cell: (addition: DryHopReport) => ComponentChildren])[] = [
  ["Form", "form", (addition) => how(addition)],
  ["Amount", "grams", ({ grams }) => <Known value={grams} unit="g" />],
  ["Dose", "dose", ({ dose }) => <Known value={dose} unit="g/L" />],
  ["Alpha acids", "alpha", ({ alpha }) => <Known value={alpha} unit="%" />],
  ["Oil", "oil", ({ oil }) => <Known value={oil} unit="mL/100g" />],
  ["Added", "added", ({ added }) => shortDate(added)],
  ["Out of the beer", "out", ({ out }) => (out === undefined ? "–" : shortDate(out))],
  ["Contact", "contactDays", ({ contactDays }) => <Known value={contactDays} unit="d" />],
  ["Temperature in contact, mean", "temperatureMean", ({ temperatureMean }) => <Known value={temperatureMean} unit="C" />],
  ["Coldest to warmest", "temperatureLow", ({ temperatureLow: low, temperatureHigh: high }) =>
    (low === undefined || high === undefined ? "–" : <Figure value={low} low={low} high={high} unit="C" />)],
  ["Outside the band it is held against", "hoursOutside", ({ hoursOutside }) => <Known value={hoursOutside} unit="h" />],
];

export function AdditionTable({ dryHops }: { readonly dryHops: readonly DryHopReport[] }) {
  const link = useLink();
  return (
    <WideTable label="Dry-hop additions">
      <table class="additions">
        <caption>{dryHops.length === 1 ? "The addition" : "The additions"}</caption>
        <thead>
          <tr>
            <th scope="col">Hop</th>
            {dryHops.map(({ hop, slug }, index) => <th key={index} scope="col"><a href={link(`hops/${slug}.html`)}><bdi>{hop}</bdi></a></th>)}
          </tr>
        </thead>
        <tbody>
          {ROWS.filter(([title, key]) => (dryHops.length > 1 || !TOLD_TOGETHER.has(title)) && dryHops.some((addition) => addition[key] !== undefined)).map(([title, , cell]) => (
            <tr key={title}>
              <th scope="row">{title}</th>
              {dryHops.map((addition, index) => <td key={index}>{cell(addition)}</td>)}
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}

function how({ form, held, into, purged }: DryHopReport): string {
  const words = [form, held, into === "keg" ? "into the keg" : undefined, purged === true ? "air purged" : undefined];
  return words.filter((word) => word !== undefined).join(", ");
}

function Known({ value, unit }: { readonly value: number | undefined; readonly unit: string }) {
  return value === undefined ? <>–</> : <Figure value={value} unit={unit} />;
}
