/** Powers, and single-letter symbols with an index: everything else of a relation is set as it is written. */
const RAISED_OR_LOWERED = /\^\(([^()]*)\)|\^([−\d.]*[\d\p{L}])|(?<![\p{L}\d.])(\p{L})(\d)(?![\d.\p{L}])/gu;

/** A relation with its powers raised and its indices lowered: `e^(-0.04 t)`, `V1 / V2`. */
export function Formula({ text }: { readonly text: string }) {
  const printed = printedFormula(text);
  const parts = [];
  let from = 0;
  for (const match of printed.matchAll(RAISED_OR_LOWERED)) {
    const [whole, group, power, symbol, index] = match;
    parts.push(printed.slice(from, match.index), symbol === undefined ? <sup>{group ?? power}</sup> : <>{symbol}<sub>{index}</sub></>);
    from = match.index + whole.length;
  }
  return <>{parts}{printed.slice(from)}</>;
}

/** A relation as it is printed: true minus signs for hyphens that stand for them. */
function printedFormula(formula: string): string {
  return formula.replaceAll(/(?<=^|[\s(^=,])-(?=[\s\d.(\p{L}])/gu, "−");
}
