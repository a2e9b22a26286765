import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  durbinWatson,
  linearContrast,
  linearFit,
  meanInterval,
  multipleRegression,
  predictAt,
  predictionInterval,
  slopeInterval,
  varianceInflation,
  type MultipleFit,
} from "../../../src/statistics/index.js";
import { agreeingDigits, expected, fixture, groupedBy, type Row } from "../fixture.js";

const certifiedRows = fixture("nist_linear_expected");
const certified = (dataset: string, statistic: string): number => {
  const row = certifiedRows.find((r) => r.text("dataset") === dataset && r.text("statistic") === statistic);
  if (row === undefined) throw new Error(`no certified ${statistic} of ${dataset}`);
  return row.number("certified");
};
const column = (rows: readonly Row[], name: string): number[] => rows.map((row) => row.number(name));
const polynomial = (x: readonly number[], degree: number): number[][] =>
  Array.from({ length: degree }, (_, k) => x.map((value) => value ** (k + 1)));

function leastDigits(fit: MultipleFit, dataset: string): number {
  const terms = fit.intercept ? [fit.intercept, ...fit.coefficients] : fit.coefficients;
  const first = fit.intercept ? 0 : 1;
  return Math.min(
    ...terms.flatMap((term, k) => [
      agreeingDigits(term.estimate, certified(dataset, `B${k + first}`)),
      agreeingDigits(term.standardError, certified(dataset, `se_B${k + first}`)),
    ]),
    agreeingDigits(fit.residualStandardDeviation, certified(dataset, "residual_sd")),
    agreeingDigits(fit.rSquared, certified(dataset, "r_squared")),
  );
}

describe("NIST StRD linear regression (certified values)", () => {
  it("Norris, as a straight line", () => {
    const rows = fixture("nist_norris");
    const fit = linearFit(column(rows, "x"), column(rows, "y"));
    expect(agreeingDigits(fit.slope, certified("Norris", "B1"))).toBeGreaterThan(13);
    expect(agreeingDigits(fit.intercept, certified("Norris", "B0"))).toBeGreaterThan(11);
    expect(agreeingDigits(fit.slopeStandardError, certified("Norris", "se_B1"))).toBeGreaterThan(12);
    expect(agreeingDigits(fit.interceptStandardError, certified("Norris", "se_B0"))).toBeGreaterThan(12);
    expect(agreeingDigits(fit.residualStandardDeviation, certified("Norris", "residual_sd"))).toBeGreaterThan(12);
    expect(agreeingDigits(fit.rSquared, certified("Norris", "r_squared"))).toBeGreaterThan(13);
    expect(agreeingDigits((fit.slope / fit.slopeStandardError) ** 2, certified("Norris", "F"))).toBeGreaterThan(12);
  });

  it.each([
    ["NoInt1", "nist_noint1"],
    ["NoInt2", "nist_noint2"],
  ] as const)("%s, through the origin; its r² is about zero, not about the mean", (dataset, file) => {
    const rows = fixture(file);
    const fit = multipleRegression([column(rows, "x")], column(rows, "y"), { intercept: false });
    expect(fit.intercept).toBeUndefined();
    expect(leastDigits(fit, dataset)).toBeGreaterThan(12);
    expect(agreeingDigits(fit.fRatio, certified(dataset, "F"))).toBeGreaterThan(12);
  });

  it("Longley, six columns that move together", () => {
    const rows = fixture("nist_longley");
    const names = ["x1_gnp_deflator", "x2_gnp", "x3_unemployed", "x4_armed_forces", "x5_population", "x6_year"];
    const fit = multipleRegression(names.map((name) => column(rows, name)), column(rows, "y"));
    expect(leastDigits(fit, "Longley")).toBeGreaterThan(11);
    expect(agreeingDigits(fit.fRatio, certified("Longley", "F"))).toBeGreaterThan(12);
  });

  it("Wampler1, an exact polynomial of degree 5: every coefficient 1, no error", () => {
    const rows = fixture("nist_wampler1");
    const fit = multipleRegression(polynomial(column(rows, "x"), 5), column(rows, "y"));
    for (const term of [fit.intercept, ...fit.coefficients]) {
      expect(term?.estimate).toBeCloseTo(1, 8);
      expect(term?.standardError).toBeCloseTo(0, 8);
    }
    expect(fit.residualStandardDeviation).toBeLessThan(1e-8); // y runs to 6.4 million
    expect(fit.rSquared).toBe(1);
    expect(fit.p).toBe(0);
  });

  it("Filip, degree 10: at least seven digits where normal equations keep none", () => {
    const rows = fixture("nist_filip");
    const fit = multipleRegression(polynomial(column(rows, "x"), 10), column(rows, "y"));
    expect(leastDigits(fit, "Filip")).toBeGreaterThan(7);
    expect(agreeingDigits(fit.fRatio, certified("Filip", "F"))).toBeGreaterThan(7);
  });
});

describe("straight lines against R (trend_expected.csv: computed with R, slopes also in scipy)", () => {
  const data = groupedBy(fixture("trend_example"), (row) => row.text("example"));
  const results = groupedBy(fixture("trend_expected"), (row) => row.text("example"));

  it.each([...data.keys()])("%s", (name) => {
    const rows = data.get(name) ?? [];
    const at = (stat: string): number => expected(results.get(name) ?? [], "stat", stat).number("value");
    const fit = linearFit(column(rows, "x"), column(rows, "y"));
    const pairs: [number, number][] = [
      [fit.count, at("n")],
      [fit.slope, at("slope")],
      [fit.slopeStandardError, at("slope_se")],
      [slopeInterval(fit).low, at("slope_lo95")],
      [slopeInterval(fit).high, at("slope_hi95")],
      [fit.intercept, at("intercept")],
      [fit.slopeP, at("p_slope")],
      [fit.residualStandardDeviation, at("resid_sd")],
      [fit.rSquared, at("r2")],
      [predictAt(fit, at("pred_x0")), at("pred_fit")],
      [predictionInterval(fit, at("pred_x0")).low, at("pred_lo95")],
      [predictionInterval(fit, at("pred_x0")).high, at("pred_hi95")],
      [meanInterval(fit, at("pred_x0")).low, at("conf_lo95")],
      [meanInterval(fit, at("pred_x0")).high, at("conf_hi95")],
      [durbinWatson(fit.residuals), at("durbin_watson")],
    ];
    for (const [ours, theirs] of pairs) expect(agreeingDigits(ours, theirs)).toBeGreaterThan(8.5);
  });

  it("Anscombe's four sets (The American Statistician 27, 1973) share a line: slope 0.5, intercept 3.00, r 0.816", () => {
    const rows = fixture("data_anscombe");
    for (const set of ["1", "2", "3", "4"]) {
      const fit = linearFit(column(rows, `x${set}`), column(rows, `y${set}`));
      expect(fit.slope).toBeCloseTo(0.5, 3);
      expect(fit.intercept).toBeCloseTo(3, 2);
      expect(Math.abs(Math.sqrt(fit.rSquared) - 0.816)).toBeLessThan(0.001);
    }
  });
});

describe("GUM H.3, calibration of a thermometer (JCGM 100:2008, table H.6; data and results from memory)", () => {
  const rows = fixture("gum_h3_data");
  const fit = linearFit(column(rows, "t_C").map((t) => t - 20), column(rows, "b_C"));
  const at = (quantity: string): number =>
    fixture("gum_expected").find((row) => row.text("example") === "GUM_H3_thermometer" && row.text("quantity") === quantity)?.number("computed_first_order") ?? Number.NaN;

  it("intercept -0.1712 (0.0029), slope 0.00218 (0.00067), scatter 0.0035", () => {
    expect(fit.intercept).toBeCloseTo(at("y1"), 6);
    expect(fit.interceptStandardError).toBeCloseTo(at("s_y1"), 7);
    expect(fit.slope).toBeCloseTo(at("y2"), 7);
    expect(fit.slopeStandardError).toBeCloseTo(at("s_y2"), 8);
    expect(fit.residualStandardDeviation).toBeCloseTo(at("s"), 7);
  });

  it("the correction at 30 °C is -0.1494 with standard uncertainty 0.0041", () => {
    expect(predictAt(fit, 10)).toBeCloseTo(at("b(30)"), 6);
    // Half-width at 95 % over Student's factor for 9 degrees of freedom, 2.262157 (textbook table).
    const { low, high } = meanInterval(fit, 10);
    expect((high - low) / 2 / 2.262157).toBeCloseTo(at("uc_b(30)"), 6);
  });
});

describe("dose and temperature raised together (confounding_example.csv: invented data, results from R)", () => {
  const rows = fixture("confounding_example");
  const results = fixture("confounding_expected");
  const at = (stat: string): number => expected(results, "stat", stat).number("value");
  const [dose, temperature, aliased, y] = [column(rows, "dose"), column(rows, "temp"), column(rows, "temp_aliased"), column(rows, "y")];

  it("VIF is 6 for both, and 1/(1 − r²) for two columns", () => {
    for (const factor of varianceInflation([dose, temperature])) {
      expect(factor).toBeCloseTo(at("VIF"), 9);
      expect(factor).toBeCloseTo(1 / (1 - at("cor_dose_temp") ** 2), 7);
    }
  });

  it("fitted together the dose keeps its effect with an error 2.6 times as large", () => {
    const fit = multipleRegression([dose, temperature], y);
    const alone = linearFit(dose, y);
    const [doseTerm, temperatureTerm] = fit.coefficients;
    const pairs: [number | undefined, number][] = [
      [doseTerm?.estimate, at("b_dose_joint")],
      [doseTerm?.standardError, at("se_dose_joint")],
      [doseTerm?.p, at("p_dose_joint")],
      [temperatureTerm?.estimate, at("b_temp_joint")],
      [temperatureTerm?.standardError, at("se_temp_joint")],
      [temperatureTerm?.p, at("p_temp_joint")],
      [fit.fRatio, at("F_overall")],
      [fit.p, at("p_overall")],
      [alone.slope, at("b_dose_alone")],
      [alone.slopeStandardError, at("se_dose_alone")],
      [alone.slopeP, at("p_dose_alone")],
    ];
    for (const [ours, theirs] of pairs) expect(agreeingDigits(ours ?? Number.NaN, theirs)).toBeGreaterThan(8.5);
  });

  it("an exact alias has no VIF to speak of, and no separate effects", () => {
    expect(varianceInflation([dose, temperature, temperature.map((t) => 2 * t + 1)])[1]).toBe(Infinity);
    // temp_aliased = 18 + dose/10 in every row: R's lm finds rank 2 of 3
    expect(varianceInflation([dose, aliased])).toEqual([Infinity, Infinity]);
    expect(() => multipleRegression([dose, aliased], y)).toThrow(/column 1 is a combination/);
    expect(() => multipleRegression([dose, temperature, aliased], y)).toThrow(/column 2 is a combination/);
  });

  it("columns that vary apart have a VIF of 1", () => {
    expect(varianceInflation([[-1, 1, -1, 1], [-1, -1, 1, 1]])).toEqual([1, 1]);
  });
});

describe("regression, by what must hold", () => {
  const points = fc
    .array(fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 })), { minLength: 4, maxLength: 20 })
    .filter((list) => new Set(list.map(([x]) => x)).size > 1);

  it("multiple regression on one column is the straight line", () => {
    fc.assert(
      fc.property(points, (list) => {
        const [x, y] = [list.map(([a]) => a), list.map(([, b]) => b)];
        const line = linearFit(x, y);
        const fit = multipleRegression([x], y);
        expect(fit.coefficients[0]?.estimate).toBeCloseTo(line.slope, 8);
        expect(fit.coefficients[0]?.standardError).toBeCloseTo(line.slopeStandardError, 8);
        expect(fit.intercept?.standardError).toBeCloseTo(line.interceptStandardError, 7);
      }),
    );
  });

  it("the order of the batches does not matter", () => {
    fc.assert(
      fc.property(points, (list) => {
        const back = list.toReversed();
        const forward = linearFit(list.map(([x]) => x), list.map(([, y]) => y));
        const backward = linearFit(back.map(([x]) => x), back.map(([, y]) => y));
        expect(forward.slope).toBeCloseTo(backward.slope, 9);
        expect(forward.slopeStandardError).toBeCloseTo(backward.slopeStandardError, 9);
      }),
    );
  });

  it("intervals contain their estimates, and prediction is wider than the mean", () => {
    fc.assert(
      fc.property(points, fc.integer({ min: -60, max: 60 }), (list, at) => {
        const fit = linearFit(list.map(([x]) => x), list.map(([, y]) => y));
        const [line, point] = [meanInterval(fit, at), predictionInterval(fit, at)];
        expect(point.low).toBeLessThanOrEqual(line.low);
        expect(line.low).toBeLessThanOrEqual(predictAt(fit, at));
        expect(predictAt(fit, at)).toBeLessThanOrEqual(line.high);
        expect(line.high).toBeLessThanOrEqual(point.high);
        expect(fit.slopeP).toBeGreaterThanOrEqual(0);
        expect(fit.slopeP).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("a constant y has slope 0, r² 0 and p 1, without rounding noise", () => {
    const fit = linearFit([1, 2, 3, 4], [0.1, 0.1, 0.1, 0.1]);
    expect([fit.slope, fit.rSquared, fit.slopeP]).toEqual([0, 0, 1]);
    expect(multipleRegression([[1, 2, 3, 4]], [0.1, 0.1, 0.1, 0.1])).toMatchObject({ rSquared: 0, fRatio: 0, p: 1 });
  });

  it("a contrast of one coefficient is that coefficient; of a difference it carries the covariance", () => {
    const rows = fixture("confounding_example");
    const fit = multipleRegression([column(rows, "dose"), column(rows, "temp")], column(rows, "y"));
    expect(linearContrast(fit, [0, 1]).standardError).toBeCloseTo(fit.coefficients[1]?.standardError ?? 0, 12);
    // The pair correlates −r = −.9129 (confounding_expected: r = .9129): var(a + b) = va + vb − 2·.9129·sa·sb
    const [a = 0, b = 0] = fit.coefficients.map((term) => term.standardError);
    expect(linearContrast(fit, [1, 1]).standardError ** 2).toBeCloseTo(a * a + b * b - 2 * 0.9128709292 * a * b, 9);
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["two points", () => linearFit([1, 2], [1, 2])],
    ["one distinct x", () => linearFit([2, 2, 2], [1, 2, 3])],
    ["lists of different length", () => linearFit([1, 2, 3], [1, 2])],
    ["a y that is no number", () => linearFit([1, 2, 3], [1, Number.NaN, 3])],
    ["a prediction at no place", () => predictAt(linearFit([1, 2, 3], [1, 2, 4]), Number.NaN)],
    ["no columns", () => multipleRegression([], [1, 2, 3])],
    ["no degrees of freedom", () => multipleRegression([[1, 2, 3], [1, 4, 9]], [1, 2, 3])],
    ["a constant column", () => multipleRegression([[1, 1, 1, 1]], [1, 2, 3, 4])],
    ["a constant column for VIF", () => varianceInflation([[1, 2, 3], [1, 1, 1]])],
    ["a single column for VIF", () => varianceInflation([[1, 2, 3]])],
    ["weights that do not match", () => linearContrast(multipleRegression([[1, 2, 4, 3]], [1, 2, 3, 4]), [1, 1])],
    ["residuals that are all zero", () => durbinWatson([0, 0, 0])],
    ["a level of 95", () => slopeInterval(linearFit([1, 2, 3], [1, 2, 4]), 95)],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});
