import { FIGURE_TABLE } from "../../report/index.js";
import { lowerFirst } from "../text/printed-words.js";

const TITLES: ReadonlyMap<string, string> = new Map(FIGURE_TABLE.map(({ id, title }) => [id, title]));

/** A figure by its title; a reading by the field it was written in. */
export function SourceName({ of }: { readonly of: string }) {
  const title = TITLES.get(of);
  return title === undefined ? <code>{of}</code> : <>{lowerFirst(title)}</>;
}

/** The figures and readings that something was worked out from. */
export function RestsOn({ from }: { readonly from: readonly string[] }) {
  if (from.length === 0) return null;
  return (
    <>
      rests on{" "}
      {from.map((name, index) => (
        <span key={name}>{index === 0 ? null : ", "}<SourceName of={name} /></span>
      ))}.
    </>
  );
}
