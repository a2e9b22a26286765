import type { BatchReport, LogReport } from "../../report/index.js";
import { printedMonth } from "../text/printed-date.js";

const CLOSED = new Set(["planned", "packaged", "dumped"]);
/** What fits one breath. */
const MOST_STYLES = 2;
const MOST_HOPS = 3;

/** Brewed and not yet packaged or dumped. */
export function isOpen({ status, figures }: BatchReport): boolean {
  // A record with a brew date and nothing else says of no fermenter that it is full.
  const begun = status !== "brewing" || Object.keys(figures).length > 0;
  return begun && !CLOSED.has(status);
}

/** What this club brews, counted from its records: nothing in it that the list doesn't show. */
export function clubInOneSentence({ club, batches }: Pick<LogReport, "club" | "batches">): string {
  const brewed = batches.filter(({ status }) => status !== "planned");
  const first = brewed.map((batch) => batch.brewed).toSorted()[0];
  if (first === undefined) return `${club.name} has brewed nothing that is written down here yet; ${counted(batches.length, "batch", "batches")} planned.`;
  const styles = byCount(brewed.flatMap(({ style }) => style ?? []));
  const hops = byCount(brewed.flatMap(({ dryHops }) => [...new Set(dryHops.map(({ hop }) => hop))]));
  const brewers = new Set(brewed.flatMap(({ brewer }) => brewer ?? [])).size;
  const kinds = [listed(styles, MOST_STYLES), hops.length === 0 ? "" : `dry-hopped ${hops.length > MOST_HOPS ? "mostly " : ""}with ${listed(hops.slice(0, MOST_HOPS), MOST_HOPS)}`];
  const count = `${counted(brewed.length, "batch", "batches")}${brewers < 2 ? "" : ` by ${brewers} brewers`} since ${printedMonth(first)}`;
  const told = kinds.filter((kind) => kind !== "").join(", ");
  return told === "" ? `${count}.` : `${told}: ${count}.`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Names, the most frequent first; as often as another: by name. */
function byCount(names: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].toSorted(([one, ones], [other, others]) => others - ones || (one < other ? -1 : 1)).map(([name]) => name);
}

function listed(names: readonly string[], most: number): string {
  const told = names.length > most ? [...names.slice(0, most), counted(names.length - most, "other style", "other styles")] : names;
  return told.length < 2 ? (told[0] ?? "") : `${told.slice(0, -1).join(", ")} and ${told.at(-1) ?? ""}`;
}
