import { describe, expect, it } from "vitest";
import { at, logReportOf, type Fields } from "../report/bench-batch.js";
import { rendered, sampleSite } from "./sample-site.js";

/** A few words of each caution that nothing else on a page says. */
const WORDS = {
  collapse: "can collapse as it cools", vessel: "the limit stamped on the vessel", bottles: "Bottles can burst", gas: "gathers low in closed rooms",
  foam: "make it foam over", dust: "Hop dust irritates", dogs: "Spent hops can kill a dog",
} as const;

/** How often each caution stands on a batch's page; those that don't are left out. */
function told(fields: Fields): Partial<Record<keyof typeof WORDS, number>> {
  const page = rendered(sampleSite(logReportOf([fields], { asOf: at(400) })), "batches/bb-01.html");
  const counts = Object.entries(WORDS).map(([name, words]) => [name, page.split(words).length - 1] as const);
  return Object.fromEntries(counts.filter(([, count]) => count > 0));
}

const hops = `[{hop: Cascade, form: pellet, amount: 100 g, added: ${at(240)}}]`;
const keg = "{into: keg, volume: 18 L, vessel: {volume: 19 L, limit: 400 kPa}, purge: {by: liquid, left: 0.05 L}, carbonation: 2.4 vol, temperature: 4 C}";
const done = { status: "packaged", fermenter: "{volume: 20 L}", samples: "[]", dumps: "[]" };

describe("cautions", () => {
  it("stand once each, all of them, on a batch that has to do with all", () => {
    expect(told({
      ...done, dry_hops: hops, crash: `{set: 2 C, from: ${at(300)}, vent: sealed}`, transfer: `{at: ${at(360)}, sanitised: true}`,
      package: `[${keg}, {into: keg, volume: 1 L, vessel: {limit: 200 kPa}, purge: {by: liquid}, carbonation: 2.4 vol, temperature: 4 C}, {into: bottles, count: 4, volume: 2 L, carbonation: 2.4 vol}]`,
    })).toEqual({ collapse: 1, vessel: 1, bottles: 1, gas: 1, foam: 1, dust: 1, dogs: 1 });
  });

  it.each([
    ["a batch in a keg, without hops or crash", { ...done, dry_hops: "[]", package: keg }, ["vessel", "gas"]],
    ["a finished batch in bottles, without hops or crash", { ...done, dry_hops: "[]", package: "{into: bottles, volume: 18 L, carbonation: 2.4 vol}" }, ["bottles"]],
    ["a batch with hops in the kettle only", { ...done, dry_hops: "[]", hops: "[{hop: Chinook, amount: 20 g, boil: 60 min}]", package: "{into: bottles, volume: 18 L, carbonation: 2.4 vol}" }, ["bottles", "dogs"]],
    ["a crash fed with gas", { ...done, dry_hops: "[]", crash: `{set: 2 C, from: ${at(300)}, vent: gas}`, package: "{into: bottles, volume: 18 L, carbonation: 2.4 vol}" }, ["bottles", "gas"]],
    ["a crash in a sealed vessel", { ...done, dry_hops: "[]", crash: `{set: 2 C, from: ${at(300)}, vent: sealed}` }, ["collapse"]],
    ["hops in beer that still ferments, as planned", { ...done, dry_hops: hops, plan: "{dry_hop_when: fermenting}" }, ["foam", "dust", "dogs"]],
    ["a batch that ferments", { status: "fermenting", fermenter: "{volume: 20 L}" }, ["gas"]],
    ["a plan with hops, a crash and a carbonation", { status: "planned", plan: "{fermenter: 20 L, dry_hop: 5 g/L, crash: 2 C, carbonation: 2.4 vol, package: 18 L}" }, ["collapse", "vessel", "bottles", "gas", "foam", "dust", "dogs"]],
    ["a plan without any of them", { status: "planned", plan: "{fermenter: 20 L}" }, ["gas"]],
  ] as const)("of %s are those that bear on it, once each", (_, fields, expected) => {
    expect(told(fields)).toEqual(Object.fromEntries(expected.map((name) => [name, 1])));
  });
});
