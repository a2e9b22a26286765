import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { releaseProblems } from "../../src/report/index.js";
import { competitionLog, OPEN, reportAt, resultsOf, type CompetitionFiles } from "./competition-log.js";

const four: CompetitionFiles = {
  head: OPEN,
  entries: "entry,code,flight,brewer,title,batch\nE1,417,A,quayside,Pale,TP-01\nE2,532,A,mudlark,Gold,\nE3,268,A,saltmarsh,Kelp,\nE4,751,A,oarlock,Bosun,\n",
  judges: "judge,brewer,flights\nJ1,,A\nJ2,,A\n",
  scores: "flight,judge,code,aroma,appearance,flavor,mouthfeel,overall,comment\nA,J1,417,9,3,15,4,7,\"Peel, then \"\"pine\"\"\"\nA,J2,417,9,3,16,4,7,\nA,J1,532,9,2,15,4,7,\nA,J2,532,8,2,15,4,7,\nA,J1,268,8,2,15,4,7,\nA,J2,268,8,2,14,4,7,\nA,J1,751,6,2,11,3,5,\nA,J2,751,6,2,10,3,5,\n",
  finals: "flight,code,score,place,decision\nA,417,38,1,\nA,532,36,2,\nA,268,36,3,\nA,751,27,,\n",
};
const decided = { ...four, finals: (four.finals ?? "").replace("36,3,", "36,3,Poured again") };
const places = (files: CompetitionFiles) => resultsOf(files).entries.map(({ entry, place }) => [entry, place?.place, place?.shared]);

describe("places", () => {
  it("are shared by equal scores without a recorded decision, whatever place is written down", () => {
    expect(places(four)).toEqual([["E1", 1, 1], ["E2", 2, 2], ["E3", 2, 2], ["E4", undefined, undefined]]);
  });

  it("stand apart where a decision is recorded", () => {
    expect(places(decided)).toEqual([["E1", 1, 1], ["E2", 2, 1], ["E3", 3, 1], ["E4", undefined, undefined]]);
  });

  it("follow the agreed scores, never the means of the sheets", () => {
    const swapped = { ...four, finals: "flight,code,score\nA,417,20\nA,532,36\nA,268,35\nA,751,40\n" };
    expect(places(swapped)).toEqual([["E1", undefined, undefined], ["E2", 2, 1], ["E3", 3, 1], ["E4", 1, 1]]);
  });

  it("of best of show follow the lowest sum of ranks; equal sums share a place unless the judges recorded theirs", () => {
    const ranked = "judge,code,rank,place,decision\nJ1,417,1,,\nJ1,532,2,,\nJ2,532,1,,\nJ2,417,2,,\n";
    expect(resultsOf({ ...four, best: ranked }).entries.map(({ bestOfShow }) => bestOfShow?.place)).toEqual([1, 1, undefined, undefined]);
    const settled = ranked.replace("J1,417,1,,", "J1,417,1,2,").replace("J2,532,1,,", "J2,532,1,1,Two votes to one");
    expect(resultsOf({ ...four, best: settled }).entries.map(({ bestOfShow }) => bestOfShow?.place)).toEqual([2, 1, undefined, undefined]);
  });
});

describe("how firmly the order stands", () => {
  it("recomputes each place with one judge left out", () => {
    // Means of J1 and J2: E1 38.5, E2 36.5, E3 35.5, E4 26.5. J1 alone: 38, 37, 36; J2 alone: 39, 36, 35.
    const [flight] = resultsOf(decided).flights;
    expect(flight?.stability?.entries.map(({ byMean, without }) => [byMean, ...without.map(({ place }) => place)])).toEqual([[1, 1, 1], [2, 2, 2], [3, 3, 3]]);
  });

  it("gives the interval of a difference from what is left when entry and judge are taken out", () => {
    // Two-way layout by hand: residuals of the differences J1 − J2 (−1, 1, 1, 1), mean 0.5; residual mean square = Σ(d − 0.5)²/2/3 = 0.5.
    // Standard error of a difference √(2 · 0.5 / 2) = 0.7071, t(0.975, 3) = 3.1824 (table): half-width 2.2503.
    const [gap] = resultsOf(decided).flights[0]?.stability?.gaps ?? [];
    expect(gap?.difference).toBeCloseTo(2, 9);
    expect((gap?.high ?? 0) - (gap?.low ?? 0)).toBeCloseTo(2 * 2.2503, 3);
    expect(gap?.clear).toBe(false);
  });
});

describe("agreement of judges", () => {
  it("is the intraclass correlation of absolute agreement, as published with its example", () => {
    // Shrout & Fleiss 1979: ICC(2,1) .29, 95 % .019 to .761; ICC(2,4) .62.
    const rows = readFileSync(new URL("../statistics/fixtures/icc_shrout_fleiss.csv", import.meta.url), "utf8").trim().split("\n").slice(1).map((line) => line.split(","));
    const codes = ["417", "532", "268", "751", "846", "935"];
    const files: CompetitionFiles = {
      head: `${OPEN}sheet: {all: 10}\n`, entries: `entry,code,flight\n${codes.map((code, index) => `E${String(index + 1)},${code},A\n`).join("")}`,
      judges: "judge,flights\nJ1,A\nJ2,A\nJ3,A\nJ4,A\n",
      scores: `flight,judge,code,all\n${rows.map(([, target, judge, score]) => `A,J${judge ?? ""},${codes[Number(target) - 1] ?? ""},${score ?? ""}\n`).join("")}`,
      finals: `flight,code,score\n${codes.map((code) => `A,${code},5\n`).join("")}`,
    };
    const agreement = resultsOf(files).flights[0]?.agreement;
    expect(agreement?.single?.value).toBeCloseTo(0.2898, 4);
    expect(agreement?.single?.low).toBeCloseTo(0.0188, 4);
    expect(agreement?.single?.high).toBeCloseTo(0.7611, 4);
    expect(agreement?.average?.value).toBeCloseTo(0.6201, 4);
  });

  it("counts entries on which judges were further apart than agreed", () => {
    const apart = { ...four, head: `${OPEN}agree_within: 0.5\n` };
    expect(resultsOf(apart).flights[0]?.agreement?.apart).toBe(4);
    expect(resultsOf(four).flights[0]?.agreement?.apart).toBe(0);
  });
});

describe("severity of judges", () => {
  const bias = readFileSync(new URL("../statistics/fixtures/judge_bias_example.csv", import.meta.url), "utf8").trim().split("\n").slice(1)
    .map((line) => line.split(",")).filter(([dataset]) => dataset === "A_disconnected");
  const codes = new Map([...new Set(bias.map(([, , entry = ""]) => entry))].map((entry, index) => [entry, `${String(101 + index)}`]));
  const flights = new Map(bias.map(([, flight = "", entry = ""]) => [entry, flight]));
  const files = (rename: (judge: string) => string): CompetitionFiles => ({
    head: `${OPEN}sheet: {all: 50}\n`,
    entries: `entry,code,flight\n${[...codes].map(([entry, code]) => `${entry},${code},${flights.get(entry) ?? ""}\n`).join("")}`,
    judges: `judge\n${[...new Set(bias.map(([, , , judge = ""]) => rename(judge)))].map((judge) => `${judge}\n`).join("")}`,
    scores: `flight,judge,code,all\n${bias.map(([, flight = "", entry = "", judge = "", score = ""]) => `${flight},${rename(judge)},${codes.get(entry) ?? ""},${score}\n`).join("")}`,
    finals: `flight,code,score\n${[...codes].map(([entry, code]) => `${flights.get(entry) ?? ""},${code},30\n`).join("")}`,
  });

  it("is refused, with the groups, where flights share no judge", () => {
    const severity = resultsOf(files((judge) => judge)).severity;
    expect(severity).toMatchObject({ linked: false, judges: [] });
    expect(severity?.groups.map((group) => group.flights)).toEqual([["F1"], ["F2"], ["F3"]]);
    expect(severity?.says).toContain("share no judge");
  });

  it("is told where a judge sat at each, sums to nothing, and changes no place", () => {
    const linked = resultsOf(files((judge) => ({ J3: "J1", J5: "J1" })[judge] ?? judge));
    expect(linked.severity?.linked).toBe(true);
    expect(linked.severity?.judges.reduce((sum, { severity }) => sum + severity, 0)).toBeCloseTo(0, 9);
    expect(linked.entries.map(({ place }) => place)).toEqual(resultsOf(files((judge) => judge)).entries.map(({ place }) => place));
  });
});

describe("what a competition keeps to itself", () => {
  it("is nothing of its results before the release: the report is as without any scores", () => {
    const head = `release: 2026-09-13 18:00\n${OPEN}`;
    const before = (files: CompetitionFiles) => reportAt(competitionLog({ ...files, head }), "2026-09-13 17:59");
    expect(before(decided)).toEqual(before({ head, entries: four.entries }));
    expect(reportAt(competitionLog({ ...decided, head }), "2026-09-13 18:00").competitions).toHaveLength(1);
    expect(reportAt(competitionLog({ ...decided, head: OPEN }), "2030-01-01").competitions).toEqual([]);
  });

  it("by default: no score, no comment, no brewer, title or batch, no order beyond the places", () => {
    const results = resultsOf({ ...decided, head: "" });
    const text = JSON.stringify(results);
    for (const word of ["quayside", "TP-01", "Kelp", "pine", "Poured again", '"score"', '"sections"', '"difference"', "417"]) expect(text).not.toContain(word);
    expect(results.flights[0]?.entries).toEqual(["E1", "E2", "E3", "E4"]);
    expect(results.entries[2]?.place).toEqual({ place: 3, shared: 1, settled: true });
  });

  it("of an entry whose batch isn't published: its names and scores; the place stays", () => {
    const hidden = resultsOf({ ...decided, batches: { "one.md": "---\ntitle: Pale\nbatch: TP-01\nbrewed: 2026-03-01\npublish: false\n---\n", "two.md": "---\ntitle: Other\nbatch: TP-02\nbrewed: 2026-03-01\n---\n" } });
    expect(hidden.flights[0]?.stability?.gaps[0]).toEqual({ first: "E1", second: "E2", clear: false });
    expect(hidden.entries[0]).toEqual({ entry: "E1", slug: "e1", flight: "A", place: { place: 1, shared: 1 } });
  });
});

describe("back at the batch", () => {
  it("its page's report has the entry once results are out; with handles hidden only if its own record enters it", () => {
    const at = (head: string, enter = "") => {
      const log = competitionLog({ ...decided, head: `release: 2026-09-13\n${head}`, batches: { "one.md": `---\ntitle: Pale\nbatch: TP-01\nbrewed: 2026-03-01\n${enter}---\n` } });
      return reportAt(log, "2026-10-01").batches[0]?.entries?.map(({ says }) => says);
    };
    expect(at(OPEN)).toEqual(["First in flight A of 4, 38 of 50 points agreed, at the Cup."]);
    expect(at("")).toBeUndefined();
    expect(at("", "enter: [{competition: cup}]\n")).toEqual(["First in flight A of 4, at the Cup."]);
  });
});

describe("results that are due", () => {
  it("and not all in are warned of, from the release on", () => {
    const log = competitionLog({ ...four, head: "release: 2026-09-13 18:00\n", finals: "flight,code,score\nA,417,38\n" });
    const asOf = (text: string) => releaseProblems(log, { text, date: text.slice(0, 10), time: text.slice(11) });
    expect(asOf("2026-09-13 17:00")).toEqual([]);
    expect(asOf("2026-09-13 18:00")).toEqual([expect.objectContaining({ code: "competition/released-incomplete", severity: "warning", found: "no agreed score for E2, E3, E4" })]);
  });
});
