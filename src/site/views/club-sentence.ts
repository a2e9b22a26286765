import type { BatchReport, LogReport } from "../../report/index.js";
import { printedDate } from "../text/printed-date.js";

const CLOSED = new Set(["planned", "packaged", "dumped"]);

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
  const style = mostBrewed(brewed);
  const open = batches.filter(isOpen).length;
  const since = `${counted(brewed.length, "batch", "batches")} brewed since ${printedDate(first.slice(0, 10))}`;
  const kind = style === undefined ? "" : `, most of them ${style}`;
  return `${since}${kind}; ${open === 0 ? "no batch is" : counted(open, "batch is", "batches are")} under way.`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** The style of more than half the batches, if there is one. */
function mostBrewed(batches: readonly BatchReport[]): string | undefined {
  const counts = new Map<string, number>();
  for (const { style } of batches) if (style !== undefined) counts.set(style, (counts.get(style) ?? 0) + 1);
  return [...counts].find(([, count]) => count > 1 && count * 2 > batches.length)?.[0];
}
