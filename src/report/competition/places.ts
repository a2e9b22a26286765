import type { PlaceReport } from "../types.js";

/** What decides a place: the higher merit stands first. */
export interface Placing {
  readonly code: string;
  readonly merit: number;
  readonly place?: number;
  readonly decision?: string;
}

/**
 * Places by merit, as the club recorded them. Entries of equal merit stand apart only where a
 * decision is recorded for one of them; else they share the best of their places. Where no place
 * is recorded at all, merit alone gives them.
 *
 * Common practice: a tie is settled by tasting again and agreeing, never by a formula.
 *
 * @param places how many are given
 */
export function placesOf(entries: readonly Placing[], places: number): Map<string, PlaceReport> {
  const recorded = entries.some(({ place }) => place !== undefined);
  const found = new Map<string, PlaceReport>();
  for (const tied of tiedGroups(entries)) {
    const ahead = entries.filter(({ merit }) => merit > (tied[0]?.merit ?? 0)).length;
    for (const [code, place] of recorded ? recordedPlaces(tied) : sharedPlaces(tied, ahead + 1)) if (place.place <= places || recorded) found.set(code, place);
  }
  return recorded ? withEqualPlacesShared(found) : found;
}

/** Entries in groups of equal merit, best first. */
export function tiedGroups(entries: readonly Placing[]): Placing[][] {
  const byMerit = new Map<number, Placing[]>();
  for (const entry of entries) byMerit.set(entry.merit, [...(byMerit.get(entry.merit) ?? []), entry]);
  return [...byMerit].sort(([a], [b]) => b - a).map(([, group]) => group);
}

/** Whether a tie is settled: places differ and someone wrote down how. */
export function isSettled(tied: readonly Placing[]): boolean {
  return tied.some(({ decision }) => decision !== undefined);
}

function sharedPlaces(tied: readonly Placing[], place: number): [string, PlaceReport][] {
  return tied.map(({ code }) => [code, { place, shared: tied.length }]);
}

function recordedPlaces(tied: readonly Placing[]): [string, PlaceReport][] {
  const given = tied.flatMap(({ place }) => (place === undefined ? [] : [place]));
  if (given.length === 0) return [];
  if (tied.length > 1 && !isSettled(tied)) return sharedPlaces(tied, Math.min(...given));
  return tied.flatMap(({ code, place }): [string, PlaceReport][] => (place === undefined ? [] : [[code, { place, shared: 1, ...(tied.length > 1 ? { settled: true } : {}) }]]));
}

/** Two entries that were given the same place share it, whatever their merit. */
function withEqualPlacesShared(found: ReadonlyMap<string, PlaceReport>): Map<string, PlaceReport> {
  const holders = (place: number): number => [...found.values()].filter((other) => other.place === place).length;
  return new Map([...found].map(([code, place]) => [code, { ...place, shared: holders(place.place) }]));
}

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** "second", "tied for second". */
export function placeWords({ place, shared }: PlaceReport): string {
  return `${shared > 1 ? "tied for " : ""}${ordinal(place)}`;
}

export function ordinal(place: number): string {
  return ORDINALS[place - 1] ?? `place ${place}`;
}
