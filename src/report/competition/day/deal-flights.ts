import type { EntryRow, JudgeRow } from "../../../records/index.js";
import type { SeededGenerator } from "../../../statistics/index.js";
import { groupedBy } from "../flight-scores.js";

/** A flight is typically eight to ten entries (published practice); fewer than three is no comparison. */
export const MOST_IN_FLIGHT = 10;
export const FEWEST_IN_FLIGHT = 3;

/** A flight by registration id; undefined for an entry that fits in none. */
export type DealtFlights = ReadonlyMap<string, string | undefined>;

/**
 * Deals entries into so many flights whose sizes differ by one at most. Entries of a style stay together, and within
 * a style those of one brewer, so that each brewer is kept from as few tables as can be.
 */
export function dealFlights(entries: readonly EntryRow[], count: number, generator: SeededGenerator): DealtFlights {
  const styles = generator.shuffle([...groupedBy(entries, ({ style }) => style ?? "").values()]);
  const order = styles.flatMap((own) => generator.shuffle([...groupedBy(own, (entry) => entry.brewer ?? entry.entry).values()]).flat());
  return new Map(order.map(({ entry }, index) => [entry, flightName(Math.floor((index * count) / order.length))]));
}

/** Puts entries that came late into the flights there are: the smallest first, then the one with most of its style. */
export function joinFlights(entries: readonly EntryRow[], judges: readonly JudgeRow[]): DealtFlights {
  const flights = [...new Set(entries.flatMap(({ flight }) => flight ?? []))];
  const dealt = new Map<string, string | undefined>(entries.map(({ entry, flight }) => [entry, flight]));
  for (const entry of entries.filter(({ flight }) => flight === undefined)) {
    const open = flights.filter((flight) => !judges.some((judge) => judge.flights.includes(flight) && isOwn(judge, entry)));
    const members = (flight: string): EntryRow[] => entries.filter((other) => dealt.get(other.entry) === flight);
    const alike = (flight: string): number => members(flight).filter(({ style }) => style === entry.style).length;
    dealt.set(entry.entry, open.toSorted((a, b) => members(a).length - members(b).length || alike(b) - alike(a))[0]);
  }
  return dealt;
}

/** Handles are the same however they are capitalised. */
export function isOwn({ brewer }: JudgeRow, entry: EntryRow): boolean {
  return brewer !== undefined && entry.brewer !== undefined && brewer.trim().toLowerCase() === entry.brewer.trim().toLowerCase();
}

const LETTERS = 26;

/** A to Z, then AA, AB … */
export function flightName(index: number): string {
  const last = String.fromCharCode(65 + (index % LETTERS));
  return index < LETTERS ? last : flightName(Math.floor(index / LETTERS) - 1) + last;
}
