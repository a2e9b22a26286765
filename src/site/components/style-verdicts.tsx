import { FIGURE_TABLE, type StyleRow } from "../../report/index.js";
import { lowerFirst } from "../text/printed-words.js";
import { Figure } from "./figure.js";

const TITLES: ReadonlyMap<string, string> = new Map(FIGURE_TABLE.map(({ id, title }) => [id, title]));

const WORDS = { pass: "inside", watch: "on the line", fail: "outside", unknown: "not known" } as const;

/** Figures against a style in short: what is inside is named, what isn't comes with its numbers. */
export function StyleVerdicts({ style, rows }: { readonly style: string; readonly rows: readonly StyleRow[] }) {
  const inside = rows.filter(({ verdict }) => verdict === "pass");
  const unknown = rows.filter(({ verdict }) => verdict === "unknown");
  return (
    <>
      <bdi>{style}</bdi>
      {rows.filter(({ verdict }) => verdict === "fail" || verdict === "watch").map((row) => (
        <span key={row.figure} class="row-line">{titleOf(row)} <Measured row={row} /> <i>{WORDS[row.verdict]}</i> <Figure value={row.low} low={row.low} high={row.high} unit={row.unit} brief /></span>
      ))}
      {inside.length === 0 ? null : <span class="row-line">Inside: {inside.map((row) => lowerFirst(titleOf(row))).join(", ")}</span>}
      {unknown.length === 0 ? null : <span class="row-line">Not known: {unknown.map((row) => lowerFirst(titleOf(row))).join(", ")}</span>}
    </>
  );
}

function titleOf({ figure }: StyleRow): string {
  return TITLES.get(figure) ?? figure;
}

function Measured({ row: { value, unit, plusMinus } }: { readonly row: StyleRow }) {
  return value === undefined ? null : <Figure value={value} unit={unit} {...(plusMinus === undefined ? {} : { plusMinus })} />;
}
