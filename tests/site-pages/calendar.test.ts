import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import type { BatchReport } from "../../src/report/index.js";
import { calendarText } from "../../src/site/data/calendar.js";
import { at, logReportOf } from "../report/bench-batch.js";
import { plannedBatch } from "./sample-report.js";

// An independent parser of RFC 5545.
const ICAL = createRequire(import.meta.url)("ical.js") as typeof import("ical.js").default;

const open: BatchReport = {
  ...plannedBatch, slug: "tp-09", batch: "TP-09", title: "Tideline Pale; ninth, go", brewed: "2026-10-15",
  next: [
    { id: "dry-hop", step: "Dry hop", state: "later", when: "2026-10-23 19:00", instant: "2026-10-23T18:00:00.000Z", says: "In 3 days." },
    { id: "tasting", step: "Tasting", state: "later", when: "2026-11-20", says: "In 31 days." },
  ],
};
const club = { name: "Saltings Homebrewers", url: "https://example.org/beer/" };

function events(text: string) {
  return new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents("vevent").map((event) => new ICAL.Event(event));
}

describe("calendar.ics", () => {
  it("is read back by an independent parser with each step's own time, in UTC", () => {
    const [hops] = events(calendarText(club, [open]));
    expect(hops?.summary).toBe("Dry hop: TP-09 Tideline Pale; ninth, go");
    expect(hops?.startDate.toJSDate().toISOString()).toBe("2026-10-23T18:00:00.000Z");
    expect(hops?.uid).toBe("tp-09-dry-hop@gylebook");
  });

  it("makes a step with only a day an all-day event on that day", () => {
    const [, tasting] = events(calendarText(club, [open]));
    expect(tasting?.startDate.isDate).toBe(true);
    expect(tasting?.startDate.toString()).toBe("2026-11-20");
  });

  it("links to the batch's page under the club's address, and to nothing without one", () => {
    expect(calendarText(club, [open])).toContain("URL;VALUE=URI:https://example.org/beer/batches/tp-09.html");
    expect(calendarText({ name: "Bench" }, [open])).not.toContain("URL");
  });

  it("is the same text every time: ids and stamps come from the record", () => {
    expect(calendarText(club, [open])).toBe(calendarText(club, [open]));
    expect(calendarText(club, [open])).toContain("DTSTAMP:20261015T000000Z");
  });

  it("holds each dated step of every open batch, and keeps its ids and stamps as days go by", () => {
    const plan = `{dates: {dry_hop: ${at(240)}, dump: ${at(320)}, crash: ${at(330)}, transfer: ${at(380)}, tasting: 2026-04-20}}`;
    const batches = [{ plan, status: "planned" }, { plan, batch: "BB-02", status: "fermenting" }, { plan, batch: "BB-03", status: "dumped" }];
    const textAt = (hour: number): string => calendarText(club, logReportOf(batches, { asOf: at(hour) }).batches);
    const steps = ["crash", "dry-hop", "dump", "tasting", "transfer"];
    const found = events(textAt(10));
    expect(found.map(({ uid }) => uid).sort()).toEqual(["bb-01", "bb-02"].flatMap((slug) => steps.map((step) => `${slug}-${step}@gylebook`)));
    expect(found.map(({ summary }) => summary.split(":")[0]).sort()).toEqual(["Crash", "Crash", "Dry hop", "Dry hop", "Dump", "Dump", "Tasting", "Tasting", "Transfer", "Transfer"]);
    expect(textAt(100)).toBe(textAt(10));
  });

  it("is a calendar without events when nothing is open", () => {
    expect(events(calendarText(club, []))).toEqual([]);
  });
});
