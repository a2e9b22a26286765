import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TastingPlan } from "../../src/report/index.js";
import { planOf, privateReportOf, recordText } from "./plans.js";

const AIM = "aim: {raise: [orange peel], hold: [bitterness], primary: orange peel, margin: 0.8}\n";
const KEPT = "samples: [{at: 2026-03-15 18:00, kept: control}]\npackage: {into: keg}\n";
const planned = (more: string): string => `tastings:\n  - samples: {before: control, after: keg}\n    ${more}\n`;

const tally = (words: readonly string[]): number[] => [...words.reduce((counts, word) => counts.set(word, (counts.get(word) ?? 0) + 1), new Map<string, number>()).values()];
const codesOf = (plan: TastingPlan): string[] => plan.rounds.flatMap(({ servings }) => servings.flatMap(({ cups }) => cups.map(({ code }) => code))).filter((code) => code !== "R");

describe("which test is picked for the question", () => {
  it.each([
    ["an attribute is to be raised", AIM, "tasters: 8", ["pair", "scores"]],
    ["no aim names an attribute", "", "tasters: 8", ["tetrad", "scores"]],
    ["it is asked whether they are alike", AIM, "tasters: 40\n    asked: similarity", ["triangle", "scores"]],
    ["the record names its own", AIM, "tasters: 12\n    triangle: {}\n    pair: {attribute: bitterness}", ["triangle", "pair", "scores"]],
  ])("%s", (_, aim, tasting, kinds) => {
    expect(planOf(aim + KEPT + planned(tasting)).rounds.map(({ kind }) => kind)).toEqual(kinds);
  });

  it("three samples or more are ranked, by what was to be raised", () => {
    const other = { "tp-02.md": recordText("TP-02", "package: {into: keg}\n") };
    const plan = planOf(`${AIM}${KEPT}tastings: [{tasters: 12, samples: {a: control, b: keg, c: TP-02/keg}}]\n`, other);
    expect(plan.rounds).toHaveLength(1);
    expect(plan.rounds[0]).toMatchObject({ kind: "ranking", attribute: "orange peel", balanced: true });
    expect(plan.options).toEqual([]);
  });
});

describe("what so many tasters find is said before anyone pours (power at alpha .05, R; power_dprime.csv rounded in the reference)", () => {
  it.each([
    [8, { pair: [0.39, 0.87], tetrad: [0.14, 0.75], triangle: [0.06, 0.33], "duo-trio": [0.09, 0.36] }],
    [12, { pair: [0.42, 0.94], tetrad: [0.18, 0.89], triangle: [0.07, 0.45], "duo-trio": [0.07, 0.38] }],
  ])("%i tasters", (tasters, expected) => {
    const { options } = planOf(AIM + KEPT + planned(`tasters: ${tasters}`));
    expect(Object.fromEntries(options.map(({ test, finds }) => [test, [Number(finds.small.toFixed(2)), Number(finds.large.toFixed(2))]]))).toEqual(expected);
  });

  it("and how many it would take for d′ 1 (panel_size_dprime.csv, n_stable)", () => {
    const { options } = planOf(AIM + KEPT + planned("tasters: 8"));
    expect(Object.fromEntries(options.map(({ test, enough }) => [test, enough]))).toEqual({ pair: 26, tetrad: 65, triangle: 220, "duo-trio": 241 });
  });

  it("a pair is one-sided where the aim sets the direction, else two-sided (paired_critical.csv: 8 tasters, 7 and 8)", () => {
    const pairOf = (attribute: string) => planOf(AIM + KEPT + planned(`tasters: 8\n    pair: {attribute: ${attribute}}`));
    expect(pairOf("orange peel").rounds[0]).toMatchObject({ needed: 7, hoped: "after" });
    expect(pairOf("orange peel").options[0]).toMatchObject({ sides: 1, needed: 7 });
    expect(pairOf("bitterness").rounds[0]).toMatchObject({ needed: 8 });
    expect(pairOf("bitterness").rounds[0]).not.toHaveProperty("hoped");
  });

  it("where less is wanted, the sample before is the one to be named", () => {
    expect(planOf(`aim: {lower: [harshness]}\n${KEPT}${planned("tasters: 8")}`).rounds[0]).toMatchObject({ attribute: "harshness", hoped: "before" });
  });

  it.each([1, 3, 5])("with %i tasters it says that nothing can be concluded", (tasters) => {
    expect(planOf(AIM + KEPT + planned(`tasters: ${tasters}`)).why.join(" ")).toMatch(/nothing can be concluded/);
  });

  it("with four tasters, no triangle of the usual kind is promised more than it can show (triangle_critical.csv: 4 of 4)", () => {
    expect(planOf(KEPT + planned("tasters: 4\n    triangle: {}")).rounds[0]?.needed).toBe(4);
    expect(planOf(KEPT + planned("tasters: 2\n    triangle: {}")).rounds[0]).not.toHaveProperty("needed");
  });

  it("too few for similarity is said, and enough is counted (similarity_max_correct.csv: triangle, 40 tasters, 30 %, beta .05)", () => {
    const why = (tasters: number) => planOf(AIM + KEPT + planned(`tasters: ${tasters}\n    asked: similarity`)).why.join(" ");
    expect(why(12)).toMatch(/can't be answered by 12 tasters/);
    expect(why(60)).toMatch(/at most \d+ right of 60/);
  });
});

describe("codes and orders", () => {
  const anyPanel = fc.record({ tasters: fc.integer({ min: 1, max: 90 }), seed: fc.stringMatching(/^[a-z0-9]{1,10}$/), test: fc.constantFrom("triangle: {}", "tetrad: {}", "duo_trio: {}", "pair: {attribute: orange peel}") });
  const anyPlan = anyPanel.map(({ tasters, seed, test }) => planOf(`${AIM}${KEPT}${planned(`tasters: ${tasters}\n    seed: "${seed}"\n    ${test}`)}`));

  it("no taster sees a code twice, and while the codes last nobody does", () => {
    fc.assert(fc.property(anyPlan, (plan) => {
      for (let place = 0; place < plan.tasters; place += 1) {
        const own = plan.rounds.flatMap(({ servings }) => servings[place]?.cups.map(({ code }) => code) ?? []).filter((code) => code !== "R");
        expect(new Set(own).size).toBe(own.length);
        for (const code of own) expect(code).toMatch(/^[1-9][0-9]{2}$/);
      }
      if (codesOf(plan).length <= 150) expect(new Set(codesOf(plan)).size).toBe(codesOf(plan).length);
    }), { numRuns: 40 });
  });

  it("orders differ by one taster at most in how often they are poured; whole blocks are balanced", () => {
    fc.assert(fc.property(anyPlan, (plan) => {
      for (const { servings, balanced } of plan.rounds) {
        const counts = tally(servings.map(({ cups }) => cups.map(({ sample }) => sample).join(" ")));
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
        if (balanced) expect(new Set(counts).size).toBe(1);
      }
    }), { numRuns: 40 });
  });

  it("the right answer is right: the odd cup, the reference's match, the two groups", () => {
    fc.assert(fc.property(anyPlan, ({ rounds: [round] }) => {
      for (const { cups, right = "" } of round?.servings ?? []) {
        const sampleOf = new Map(cups.map(({ code, sample }) => [code, sample]));
        const others = cups.filter(({ code }) => code !== right).map(({ sample }) => sample);
        if (round?.kind === "triangle") expect([...new Set(others)]).toEqual([others[0]]);
        if (round?.kind === "triangle") expect(others).not.toContain(sampleOf.get(right));
        if (round?.kind === "duo-trio") expect(sampleOf.get(right)).toBe(cups[0]?.sample);
        if (round?.kind === "tetrad") expect(right.split(", ").map((group) => new Set(group.split(" + ").map((code) => sampleOf.get(code))).size)).toEqual([1, 1]);
        if (round?.kind === "pair") expect(right).toBe("");
      }
    }), { numRuns: 40 });
  });

  it("the same record deals the same again; another seed deals others", () => {
    const dealt = (seed: string) => codesOf(planOf(AIM + KEPT + planned(`tasters: 8${seed}`)));
    expect(dealt("")).toEqual(dealt(""));
    expect(dealt("\n    seed: 4711")).not.toEqual(dealt(""));
    expect(planOf(AIM + KEPT + planned("tasters: 8")).seed).toBe("TP-03, tasting 1");
  });
});

describe("what the record leaves open is filled in and said", () => {
  it("with nothing planned, the held-back sample is poured beside the package, and it is called a suggestion", () => {
    const plan = planOf(AIM + KEPT);
    expect(plan).toMatchObject({ number: 1, tasters: 8, asked: "difference", samples: [{ name: "before", drawnFrom: "control" }, { name: "after", drawnFrom: "keg" }] });
    expect(plan.filledIn[0]).toMatch(/^The record plans no tasting: this one is a suggestion/);
    expect(plan.cautions.join(" ")).toMatch(/can burst/);
  });

  it("with nothing held back, the batch it is compared with is", () => {
    const plan = planOf("repeats: TP-02\n", { "tp-02.md": recordText("TP-02", "package: {into: bottles}\n") });
    expect(plan.samples[0]).toEqual({ name: "before", drawnFrom: "TP-02/bottles" });
    expect(plan.notAlike).toEqual(["They differ in all that batch TP-02 differs in."]);
  });

  it("tastings with results are left alone; those to come keep their number", () => {
    const done = "tastings:\n  - {tasters: 8, triangle: {correct: 5}}\n  - {name: Second go, date: 2026-05-01, tasters: 6, samples: {before: control, after: keg}}\n";
    const { tastings } = privateReportOf({ "tp-03.md": recordText("TP-03", KEPT + done) });
    expect(tastings.map(({ number, name, date }) => ({ number, name, date }))).toEqual([{ number: 2, name: "Second go", date: "2026-05-01" }]);
  });

  it("what is in the beers is listed, of both batches where two are poured", () => {
    const other = { "tp-02.md": recordText("TP-02", "package: {into: keg}\ngrist: [{malt: Rye malt, amount: 1 kg}]\n") };
    const plan = planOf(`grist: [{malt: Wheat malt, amount: 1 kg}]\nadditions: [{what: lactose}]\n${planned("tasters: 8").replace("control", "TP-02/keg")}`, other);
    expect(plan.contains).toEqual(["Rye malt", "Wheat malt", "lactose"]);
  });

  it("alcohol a taster: cups, pour and the strongest beer (6 cups of 50 mL at 5 % hold 15 mL, 11.8 g at 0.789 g/mL)", () => {
    const gravity = "fermenter: {volume: 22 L, gravity: 1.050}\nfermentation: {readings: [{at: 2026-03-20 08:00, gravity: 1.012}]}\npackage: {date: 2026-03-24, into: keg}\n";
    const { drink } = planOf(`${gravity}samples: [{kept: control}]\n${planned("tasters: 8\n    tetrad: {}")}`);
    expect(drink).toMatchObject({ cups: 6, pourMl: 50, abv: { batch: "TP-03", basis: "computed" } });
    expect(drink.abv?.percent).toBeCloseTo(5, 0);
    expect(drink.alcoholG).toBeCloseTo((300 * 0.7893 * (drink.abv?.percent ?? 0)) / 100, 6);
    expect(drink.alcoholG).toBeCloseTo(11.8, 0);
    expect(planOf(KEPT).drink).not.toHaveProperty("alcoholG");
  });
});
