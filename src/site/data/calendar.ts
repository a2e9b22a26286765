import ical, { ICalCalendarMethod } from "ical-generator";
import type { BatchReport, NextStep } from "../../report/index.js";
import { textFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { siteAddress } from "../page/site-address.js";
import type { SiteFile } from "../site-file.js";

const HOUR_MS = 3_600_000;

/** What each open batch needs and when, as a calendar to subscribe to (RFC 5545). */
export function calendarFiles(site: Site): SiteFile[] {
  const { club, batches } = site.inputs.log;
  const waiting = batches.filter((batch) => batch.next.length > 0);
  const madeFrom = waiting.map(({ slug, title, batch, brewed, next }) => [slug, title, batch, brewed, next]);
  return [textFile(site, "calendar.ics", [club.name, club.url, madeFrom], () => calendarText(club, waiting))];
}

/**
 * Steps with a time are instants in UTC, steps with only a day are all-day
 * events; ids and stamps come from the record, so a rebuild changes nothing.
 */
export function calendarText(club: { readonly name: string; readonly url?: string }, batches: readonly BatchReport[]): string {
  const calendar = ical({ name: `${club.name}: what is due`, prodId: { company: "gylebook", product: "log", language: "EN" }, method: ICalCalendarMethod.PUBLISH });
  for (const batch of batches) {
    for (const step of batch.next) calendar.createEvent(eventOf(club.url, batch, step));
  }
  return calendar.toString();
}

function eventOf(url: string | undefined, batch: BatchReport, step: NextStep) {
  const page = `batches/${batch.slug}.html`;
  return {
    id: `${batch.slug}-${step.id}@gylebook`,
    stamp: new Date(`${batch.brewed.slice(0, 10)}T00:00:00Z`),
    summary: `${step.step}: ${batch.batch} ${batch.title}`,
    description: `Planned for ${step.when}.`,
    ...spanOf(step),
    ...(url === undefined ? {} : { url: siteAddress(url, page) }),
  };
}

function spanOf(step: NextStep) {
  if (step.instant === undefined) {
    return { start: new Date(`${step.when.slice(0, 10)}T00:00:00Z`), allDay: true };
  }
  const start = new Date(step.instant);
  return { start, end: new Date(start.getTime() + HOUR_MS) };
}
