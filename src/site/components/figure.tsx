import type { FigureBasis } from "../../report/index.js";
import { useLink, usePage } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import { printedProbability, printedQuantity, type PrintableQuantity } from "../text/printed-quantity.js";

export interface FigureProps extends PrintableQuantity {
  /** Where its working is, as a path in the site: "batches/tp-03.html#working-abv". */
  readonly working?: string | undefined;
  /** A planned figure is set in italics; say in words how a figure came about where nothing beside it does. */
  readonly basis?: FigureBasis | "planned" | undefined;
  readonly saysBasis?: boolean;
}

/**
 * Every number on a page goes through here: rounded to what its uncertainty
 * supports, with its unit, the other unit system in brackets, and a link to
 * how it was worked out.
 */
export function Figure({ working, basis = "measured", saysBasis = false, ...quantity }: FigureProps) {
  const link = useLink();
  const { units } = usePage();
  const { first, other } = printedQuantity(quantity, units);
  const number = (
    <>
      <span class="number">{first}</span>
      {other === undefined ? null : <>{" "}<span class="other-unit">({other})</span></>}
    </>
  );
  const linked = working === undefined ? <span class="figure">{number}</span> : <a class="figure" href={link(working)}>{number}</a>;
  if (basis !== "planned") return saysBasis ? <>{linked}<span class="basis"> {basis}</span></> : linked;
  return <i class="planned">{saysBasis ? "planned " : null}{linked}</i>;
}

/** What stands where a figure would: the reading that would give it. */
export function NotMeasured({ why }: { readonly why: string }) {
  const words = useWords();
  return <span class="not-measured">not measured: {words(why)}</span>;
}

/** A chance between 0 and 1. */
export function Probability({ p }: { readonly p: number }) {
  return <span class="figure number">{printedProbability(p)}</span>;
}
