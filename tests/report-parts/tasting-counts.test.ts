import { describe, expect, it } from "vitest";
import { tastingReports } from "../../src/report/tasting.js";
import type { TastingReport } from "../../src/report/types.js";
import { fixture, type FixtureRow } from "./fixture.js";
import { batchOf, recordOf, tastingOf, type Tasting } from "./records.js";

function told(fields: Partial<Tasting>, aim?: Parameters<typeof batchOf>[0]): TastingReport {
  const [report] = tastingReports(recordOf(batchOf({ tastings: [tastingOf(fields)], ...aim })));
  if (report === undefined) throw new Error("no tasting came out");
  return report;
}

function discriminationExample(test: string, correct: number, tasters: number): FixtureRow {
  const row = fixture("discrimination_examples").find((one) => one.text("protocol") === test && one.number("x") === correct && one.number("n") === tasters);
  if (row === undefined) throw new Error(`no example of ${correct} of ${tasters} by ${test}`);
  return row;
}

const votes = (before: number, after: number) => [{ sample: "before", count: before }, { sample: "after", count: after }];

describe("a triangle", () => {
  // Table of fewest correct answers, COMPUTED with R; 176 cells equal to FAO V7180E Appendix A.
  const rows = fixture("triangle_critical").filter((row) => row.number("n") >= 6 && row.number("n") <= 24);

  it("gives the exact p and the critical count of the published table", () => {
    for (const row of rows) {
      const triangle = told({ triangle: { correct: row.number("k_0.05") }, tasters: row.number("n") }).triangle;
      expect(triangle?.p).toBeCloseTo(row.number("p_0.05"), 9);
      expect(triangle?.critical).toBe(row.number("k_0.05"));
    }
    expect(rows).toHaveLength(19);
  });

  it("is shown at the critical count and not shown one below", () => {
    for (const row of rows) {
      const at = told({ triangle: { correct: row.number("k_0.05") }, tasters: row.number("n") }).says[0];
      const below = told({ triangle: { correct: row.number("k_0.05") - 1 }, tasters: row.number("n") }).says[0];
      expect(at).toContain("is shown.");
      expect(below).toContain("a difference is not shown; up to ");
    }
  });

  it("gives share, exact interval, discriminators and d′ as R does", () => {
    // discrimination_examples.csv, 7 of 12: COMPUTED with R (Clopper–Pearson limits mapped through the psychometric curve).
    const row = discriminationExample("triangle", 7, 12);
    const { triangle } = told({ triangle: { correct: 7 }, tasters: 12 });
    const found = [triangle?.share, triangle?.low, triangle?.high, triangle?.discriminators?.high, triangle?.dPrime?.value, triangle?.dPrime?.high];
    const columns = ["pc", "pc_cp_lo", "pc_cp_hi", "pd_cp_hi", "dprime", "dprime_hi"];
    for (const [index, column] of columns.entries()) expect(found[index], column).toBeCloseTo(row.number(column), 5);
  });

  it("says up to how many could still tell, from the one-sided limit", () => {
    // similarity_small_n.csv: 4 of 12, what guessing alone gets, leaves .4137 (COMPUTED).
    for (const row of fixture("similarity_small_n").filter((one) => one.number("n") > 5)) {
      const tasting = told({ triangle: { correct: row.number("x_at_chance") }, tasters: row.number("n") });
      expect(tasting.triangle?.stillTelling).toBeCloseTo(row.number("pd_upper95_one_sided"), 6);
    }
    expect(told({ triangle: { correct: 4 }, tasters: 12 }).says[0]).toContain("up to 41 % of tasters could still tell them apart");
  });

  it("has no upper bound in JSON when all answer right", () => {
    const { triangle } = told({ triangle: { correct: 6 }, tasters: 6 });
    expect(triangle?.dPrime).not.toHaveProperty("high");
    expect(triangle?.dPrime).not.toHaveProperty("value");
    expect(triangle?.dPrime?.low).toBeCloseTo(discriminationExample("triangle", 6, 6).number("dprime_lo"), 5);
  });

  it("is described only at five tasters or fewer, even when all are right", () => {
    const { says } = told({ triangle: { correct: 5 }, tasters: 5 });
    expect(says[0]).toBe("Triangle: 5 of 5 right, where guessing alone gets one in three. 5 tasters are too few to conclude from: the count is described only.");
    expect(told({ triangle: { correct: 1 }, tasters: 1 }).says[0]).toContain("One taster is too few to conclude from");
  });

  it("counts the tasters of the test, where they are fewer", () => {
    expect(told({ triangle: { correct: 5, tasters: 8 }, tasters: 12 }).triangle?.tasters).toBe(8);
  });

  it("says what is missing instead of guessing the panel", () => {
    const tasting = told({ triangle: { correct: 5 } });
    expect(tasting.triangle).toBeUndefined();
    expect(tasting.says[0]).toBe("Triangle: 5 right, but how many took the test isn't recorded.");
    expect(told({ triangle: {}, tasters: 8 }).says[0]).toBe("Triangle: triangle.correct isn't recorded.");
    expect(told({ duoTrio: {}, tasters: 8 }).says[0]).toBe("Duo-trio: duo_trio.correct isn't recorded.");
  });

  it("says the difference that such a panel finds in 8 of 10 tastings", () => {
    // power_dprime.csv: at d′ 2 a triangle of 8 has power .33 and of 12 .45 (sensory.md 1.6), so both need more than 2 for .8.
    const { triangle } = told({ triangle: { correct: 7 }, tasters: 12 });
    expect(triangle?.detectable?.dPrime).toBeGreaterThan(2);
    expect(triangle?.missed?.dPrime).toBeGreaterThan(2);
    expect(triangle?.missed?.dPrime).toBeLessThan(triangle?.detectable?.dPrime ?? 0);
  });

  it("notes that at the edge the two-sided interval may reach down to none", () => {
    // sensory.md 1.3: 6 of 9 gives p .0424, yet the interval of discriminators begins at 0.
    expect(told({ triangle: { correct: 6 }, tasters: 9 }).says[0]).toContain("still reaches down to none");
  });
});

describe("the question whether samples are alike", () => {
  it("is refused under thirty tasters", () => {
    expect(told({ triangle: { correct: 4 }, tasters: 12, asked: "similarity" }).says[1]).toContain("12 tasters can't answer that");
  });

  it("is answered against the stated limit from thirty on", () => {
    // 36 tasters, 9 right of 12 expected by guessing: one-sided limit of the share right is .397 (binomial), so about 10 % tell.
    expect(told({ triangle: { correct: 9 }, tasters: 36, asked: "similarity" }).says[1]).toContain("They are alike enough in that sense, with 30 % as the limit");
    expect(told({ triangle: { correct: 18 }, tasters: 36, asked: "similarity" }).says[1]).toContain("not shown");
  });

  it("isn't raised when it wasn't asked", () => {
    expect(told({ triangle: { correct: 9 }, tasters: 36, asked: "difference" }).says.join(" ")).not.toContain("alike");
  });
});

describe("a named pair", () => {
  it("is one-sided where the aim had set the direction", () => {
    // P(X ≥ 9 of 12, ½) = (220 + 66 + 12 + 1) / 4096 = 0.072998; discrimination_examples.csv, twoAFC 9 of 12.
    const tasting = told({ pair: [{ attribute: "pine", counts: votes(3, 9) }] }, { aim: { raise: ["pine"] } });
    expect(tasting.pair).toMatchObject({ attribute: "pine", before: 3, after: 9, correct: 9, tasters: 12, sides: 1, chance: 0.5 });
    expect(tasting.pair?.p).toBeCloseTo(299 / 4096, 12);
  });

  it("counts the other way for an attribute to be lowered", () => {
    const { pair } = told({ pair: [{ attribute: "grassy", counts: votes(9, 3) }] }, { aim: { lower: ["grassy"] } });
    expect(pair?.correct).toBe(9);
    expect(pair?.p).toBeCloseTo(299 / 4096, 12);
  });

  it("is two-sided where no direction was set", () => {
    expect(told({ pair: [{ attribute: "pine", counts: votes(3, 9) }] }).pair?.p).toBeCloseTo(2 * 299 / 4096, 12);
  });

  it("allows for several pairs by Holm before anything is called shown", () => {
    // 10 of 12 one-sided: 79/4096 = 0.0193, twice that with two pairs asked: 0.0386.
    const { says } = told({ pair: [{ attribute: "pine", counts: votes(2, 10) }, { attribute: "fruit", counts: votes(6, 6) }] }, { aim: { raise: ["pine"] } });
    expect(says[0]).toContain("0.039 with the other pairs allowed for): more pine in after is shown.");
    expect(says[1]).toContain("a difference in fruit is not shown");
  });

  it("is left out while nobody answered", () => {
    expect(told({ pair: [{ attribute: "pine", counts: votes(0, 0) }] }).pair).toBeUndefined();
  });
});

describe("a preference", () => {
  it("gives the exact two-sided p and interval of the worked examples", () => {
    // preference_examples.csv: p COMPUTED; 40 of 60 and 35 of 60 are a published course exercise.
    for (const row of fixture("preference_examples")) {
      const [liked, all] = [row.number("prefer_A"), row.number("n")];
      const { preference } = told({ preference: { counts: votes(all - liked, liked) } });
      expect(preference?.p).toBeCloseTo(row.number("p_exact_two_sided"), 7);
      expect(preference?.low).toBeCloseTo(row.number("cp_lo"), 5);
      expect(preference?.high).toBeCloseTo(row.number("cp_hi"), 5);
    }
  });

  it("reports votes for neither and never splits them", () => {
    // Dropped, 20 against 8 gives .0357; split equally it would be .0807, in proportion .0064 (preference_no_preference.csv).
    const { preference, says } = told({ preference: { counts: votes(8, 20), none: 12 } });
    expect(preference).toMatchObject({ before: 8, after: 20, none: 12 });
    expect(preference?.p.toFixed(4)).toBe("0.0357");
    expect(says[0]).toContain("20 for after, 8 for before, 12 for neither");
  });

  it("has p 1 and says so when nobody chose", () => {
    const { preference, says } = told({ preference: { counts: votes(0, 0), none: 7 } });
    expect(preference).toEqual({ before: 0, after: 0, none: 7, p: 1 });
    expect(says[0]).toContain("Nobody chose");
  });
});

it("never says that there is no difference, and prints no stars", () => {
  for (const correct of [0, 3, 6, 9, 12]) {
    const says = told({ triangle: { correct }, tasters: 12, preference: { counts: votes(6, 6) }, pair: [{ attribute: "pine", counts: votes(6, 6) }] }).says.join(" ");
    expect(says).not.toMatch(/no (significant )?difference|\*/iu);
  }
});
