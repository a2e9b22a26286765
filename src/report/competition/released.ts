import { instantMs, type CivilTime, type CompetitionRecord, type Log } from "../../records/index.js";

/** Whether results may appear: the release time is past, on the club's clock. Without one they never may. */
export function isReleased({ data: { release } }: CompetitionRecord, asOf: CivilTime, zone: string): boolean {
  return release !== undefined && instantMs(release, zone) <= instantMs(asOf, zone);
}

/** Competitions whose results may appear and are there, newest first. */
export function releasedCompetitions({ competitions, club }: Log, asOf: CivilTime): CompetitionRecord[] {
  return newestFirst(competitions.filter((record) => isReleased(record, asOf, club.zone) && record.finals.length > 0));
}

/** Competitions still to be held on that day, the next one first. */
export function comingCompetitions({ competitions, club }: Log, asOf: CivilTime): CompetitionRecord[] {
  return newestFirst(competitions.filter((record) => record.data.date.date >= asOf.date && !isReleased(record, asOf, club.zone))).reverse();
}

function newestFirst(records: readonly CompetitionRecord[]): CompetitionRecord[] {
  return records.toSorted((a, b) => (a.data.date.text === b.data.date.text ? (a.slug < b.slug ? -1 : 1) : a.data.date.text < b.data.date.text ? 1 : -1));
}
