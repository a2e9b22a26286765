import { describe, expect, it } from "vitest";
import type { NextStep } from "../../src/report/index.js";
import { at, batchOf, type Fields } from "./bench-batch.js";

/** Dry hop, crash, transfer and tasting planned at these hours after pitching. */
const plan = `{dates: {dry_hop: ${at(240)}, crash: ${at(330)}, transfer: ${at(380)}, tasting: ${at(560)}}}`;
const still = `{readings: [{at: ${at(150)}, gravity: 1.010}, {at: ${at(200)}, gravity: 1.010}]}`;

/** What is next at an hour, as `step state`. */
function next(hour: number, fields: Fields = {}): NextStep[] {
  return [...batchOf({ plan, fermentation: still, ...fields }, { asOf: at(hour) }).next];
}

const states = (steps: readonly NextStep[]): string[] => steps.map(({ step, state }) => `${step} ${state}`);

describe("a planned step", () => {
  it("is later, due within a day and a half, then overdue", () => {
    expect(states(next(203)).slice(0, 1)).toEqual(["Dry hop later"]);
    expect(states(next(204)).slice(0, 1)).toEqual(["Dry hop due"]);
    expect(states(next(240)).slice(0, 1)).toEqual(["Dry hop due"]);
    expect(states(next(241)).slice(0, 1)).toEqual(["Dry hop overdue"]);
  });

  it("says how far off it is", () => {
    expect(next(190)[0]?.says).toBe("In 2 days.");
    expect(next(228)[0]?.says).toBe("In 1 day.");
    expect(next(238)[0]?.says).toBe("In 2 h.");
    expect(next(300)[0]?.says).toBe("Planned for 3 days ago and not recorded.");
  });

  it("is done once it is recorded and has come", () => {
    const hopped = { dry_hops: `[{hop: Cascade, amount: 100 g, added: ${at(245)}}]` };
    expect(states(next(250, hopped))).toEqual(["Crash later", "Transfer later", "Tasting later"]);
    expect(states(next(242, hopped))[0]).toBe("Dry hop overdue");
    expect(states(next(331, { ...hopped, crash: `{set: 2 C, from: ${at(330)}}` }))).toEqual(["Transfer later", "Tasting later"]);
    expect(states(next(381, { ...hopped, crash: `{set: 2 C, from: ${at(330)}}`, transfer: `{at: ${at(380)}}` }))).toEqual(["Tasting later"]);
  });

  it("stands where it is planned in time, whatever comes first in other cellars", () => {
    const dumpedLate = { plan: plan.replace("crash:", `dump: ${at(375)}, crash:`) };
    expect(next(200, dumpedLate).map(({ id }) => id)).toEqual(["dry-hop", "crash", "dump", "transfer", "tasting"]);
  });

  it("planned for a day is due all that day and overdue on the next", () => {
    // 240 h after pitching is 18:00 on 17 March.
    const dated = { plan: "{dates: {dry_hop: 2026-03-17}}" };
    expect(next(245, dated)[0]).toMatchObject({ state: "due", says: "Today." });
    expect(next(246.5, dated)[0]?.state).toBe("overdue");
  });
});

describe("a dry hop that should wait", () => {
  it("is blocked by a fall of gravity, with how far it fell in how long", () => {
    const falling = `{readings: [{at: ${at(152)}, gravity: 1.014}, {at: ${at(200)}, gravity: 1.012}]}`;
    expect(next(230, { fermentation: falling })[0]).toMatchObject({
      state: "blocked", says: `Gravity fell 0.002 in the 48 h to ${at(200)}: not terminal, hold the dry hop.`,
    });
  });

  it.each([
    ["no reading", "{readings: []}", "No gravity reading since pitching"],
    ["one reading", `{readings: [{at: ${at(200)}, gravity: 1.010}]}`, "one more reading, a day or more after"],
    ["two readings less than a day apart", `{readings: [{at: ${at(190)}, gravity: 1.010}, {at: ${at(200)}, gravity: 1.010}]}`, "one more reading, a day or more after"],
    ["only the wort's own gravity", `{readings: [{at: ${at(0)}, gravity: 1.050}]}`, "No gravity reading since pitching"],
  ])("is blocked by %s, and says what is needed", (_, fermentation, says) => {
    expect(next(230, { fermentation })[0]).toMatchObject({ state: "blocked", says: expect.stringContaining(says) as string });
  });

  it("isn't blocked while it is further off, nor where the plan wants hops in fermenting beer", () => {
    expect(next(190, { fermentation: "{readings: []}" })[0]?.state).toBe("later");
    const early = { fermentation: "{readings: []}", plan: `{dry_hop_when: fermenting, dates: {dry_hop: ${at(240)}}}` };
    expect(next(230, early)[0]?.state).toBe("due");
  });

  it("leads what the batch's page says", () => {
    expect(batchOf({ plan, fermentation: "{readings: []}" }, { asOf: at(230) }).summary).toContain("hold the dry hop");
  });
});

describe("a batch that is finished", () => {
  const packaged = { package: `{date: ${at(400)}, into: keg}` };

  it("waits for its tasting at most", () => {
    expect(states(next(450, packaged))).toEqual(["Tasting later"]);
    expect(next(600, packaged)).toEqual([]);
  });

  it("needs nothing once dumped", () => {
    expect(next(230, { status: "dumped" })).toEqual([]);
  });
});
