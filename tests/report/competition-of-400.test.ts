import { beforeAll, describe, expect, it } from "vitest";
import type { CompetitionReport, LogReport } from "../../src/report/index.js";
import { siteFiles } from "../../src/site/index.js";
import { competitionLog, OPEN, reportAt } from "./competition-log.js";

const FLIGHTS = 40;
const IN_FLIGHT = 10;
const all = Array.from({ length: FLIGHTS * IN_FLIGHT }, (_, index) => ({
  entry: `E${String(index + 1).padStart(3, "0")}`, code: String(101 + index), flight: `F${String(Math.floor(index / IN_FLIGHT) + 1).padStart(2, "0")}`,
  score: 45 - (index % IN_FLIGHT),
}));

/** 400 entries, ten a flight, two judges each; within a flight every entry a point under the one before it. */
function released(): LogReport {
  const rows = all.flatMap(({ flight, code, score }) => [`${flight},J-${flight}a,${code},${score}`, `${flight},J-${flight}b,${code},${score - 1}`]);
  const flights = [...new Set(all.map(({ flight }) => flight))];
  const log = competitionLog({
    head: `${OPEN}release: 2026-09-13 18:00\nsheet: {all: 50}\n`,
    entries: `entry,code,flight,brewer,title\n${all.map(({ entry, code, flight }) => `${entry},${code},${flight},brewer-${code},Beer ${code}\n`).join("")}`,
    judges: `judge,flights\n${flights.map((flight) => `J-${flight}a,${flight}\nJ-${flight}b,${flight}\n`).join("")}`,
    scores: `flight,judge,code,all\n${rows.join("\n")}\n`,
    finals: `flight,code,score\n${all.map(({ flight, code, score }) => `${flight},${code},${score}\n`).join("")}`,
  });
  return reportAt(log, "2026-10-01");
}

describe("results of a competition with 400 entries", () => {
  let report: LogReport;
  let results: CompetitionReport | undefined;
  beforeAll(() => {
    report = released();
    [results] = report.competitions;
  }, 120_000);

  it("have every entry once, in its flight, with three places a flight", () => {
    expect(results?.entries).toHaveLength(400);
    expect(results?.flights.map(({ entries }) => entries.length)).toEqual(Array.from({ length: FLIGHTS }, () => IN_FLIGHT));
    expect(results?.entries.filter(({ place }) => place?.place === 1).map(({ entry }) => entry)).toEqual(all.filter(({ score }) => score === 45).map(({ entry }) => entry));
  });

  it("are one page with a way to each flight, and a page of feedback for each entry", () => {
    const files = siteFiles({ log: report, version: "0.0.0-test", methods: [], recordFields: [], problemCatalogue: [], chartMarkup: () => "", photos: new Map(), logs: [] });
    const page = files.find(({ path }) => path === "competitions/cup.html")?.render() ?? "";
    const targets = [...page.matchAll(/href="#([^"]+)"/gu)].map(([, id = ""]) => id);
    const ids = new Set([...page.matchAll(/ id="([^"]+)"/gu)].map(([, id = ""]) => id));
    expect(targets.filter((id) => !ids.has(id))).toEqual([]);
    expect(targets.filter((id) => id.startsWith("flight-"))).toHaveLength(FLIGHTS);
    expect(files.filter(({ path }) => /^competitions\/cup\/.+\.html$/u.test(path))).toHaveLength(400);
    for (const { entry } of all) expect(page).toContain(`>${entry}<`);
  }, 120_000);
});
