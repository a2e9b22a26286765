import { describe, expect, it } from "vitest";
import { individualsChart } from "../../../src/statistics/index.js";
import { fixture } from "../fixture.js";

const valuesOf = (example: string): number[] =>
  fixture("imr_example").filter((row) => row.text("example") === example).map((row) => row.number("x"));
const expectedOf = (example: string, d2: string, stat: string): string => {
  const row = fixture("imr_expected").find(
    (r) => r.text("example") === example && r.text("d2").startsWith(d2) && r.text("stat") === stat,
  );
  if (row === undefined) throw new Error(`no ${stat} for ${example}`);
  return row.text("value");
};

describe("NIST/SEMATECH e-Handbook 6.3.2.2, flow data", () => {
  const flow = valuesOf("nist_6.3.2.2_flow");

  it.each([
    ["rounded", "1.128"], // as the handbook prints: 50.81, 1.8778, 55.8041, 45.8159
    ["exact", "2/sqrt(pi)"],
  ] as const)("limits with the %s divisor", (divisor, label) => {
    const chart = individualsChart(flow, { divisor });
    const at = (stat: string): number => Number(expectedOf("nist_6.3.2.2_flow", label, stat));
    expect(chart.center).toBeCloseTo(at("mean"), 8);
    expect(chart.meanMovingRange).toBeCloseTo(at("mrbar"), 8);
    expect(chart.sigma).toBeCloseTo(at("sigma"), 8);
    expect(chart.upper).toBeCloseTo(at("ucl"), 8);
    expect(chart.lower).toBeCloseTo(at("lcl"), 8);
    expect(chart.movingRangeUpper).toBeCloseTo(at("mr_ucl"), 8);
  });

  it("shows no signal, and ten points give provisional limits", () => {
    expect(individualsChart(flow)).toMatchObject({ signals: [], standing: "provisional" });
  });

  it("uses the constants d2 = 1.1283792 and D4 = 3.2665319 (control_chart_constants.csv, computed by integration)", () => {
    const chart = individualsChart(flow);
    const [constants] = fixture("control_chart_constants");
    expect(chart.divisor).toBeCloseTo(constants?.number("d2") ?? 0, 7);
    expect(chart.movingRangeUpper / chart.meanMovingRange).toBeCloseTo(constants?.number("D4") ?? 0, 7);
  });
});

describe("a shift after point 12 (invented data, signals from imr_expected.csv)", () => {
  const values = valuesOf("invented_shift_after_12");
  const chart = individualsChart(values, { baseline: 12 });
  const at = (stat: string): string => expectedOf("invented_shift_after_12", "2/sqrt(pi)", stat);
  const signalled = (rule: string): string => chart.signals.filter((s) => s.rule === rule).map((s) => s.index + 1).join(" ");
  const listed = (stat: string): string => expectedOf("invented_shift_after_12", "signal", stat);

  it("takes its limits from the first twelve only", () => {
    expect(chart.center).toBeCloseTo(Number(at("mean")), 8);
    expect(chart.upper).toBeCloseTo(Number(at("ucl")), 7);
    expect(chart.lower).toBeCloseTo(Number(at("lcl")), 7);
    expect(chart.movingRanges).toHaveLength(values.length - 1);
  });

  it("signals points 16, 18 and 20 beyond the limit and the run of eight at 20", () => {
    expect(signalled("beyond-limit")).toBe(listed("r1_beyond_3s"));
    expect(signalled("run-of-eight")).toBe(listed("we_8_same_side"));
    expect(chart.signals.every((signal) => signal.side === "above")).toBe(true);
  });
});

describe("what must hold", () => {
  it("fewer than 8 points: no limits to draw and no signals; fewer than 15: provisional (common practice)", () => {
    const chart = individualsChart([1, 2, 1, 2, 1, 2, 90]);
    expect(chart.standing).toBe("none");
    expect(chart.signals).toEqual([]);
    const points = Array.from({ length: 15 }, (_, i) => i % 3);
    expect(individualsChart(points.slice(0, 8)).standing).toBe("provisional");
    expect(individualsChart(points.slice(0, 14)).standing).toBe("provisional");
    expect(individualsChart(points).standing).toBe("set");
  });

  it("a low point and a low run are signalled below", () => {
    const steady = [5, 6, 5, 6, 5, 6, 5, 6];
    const chart = individualsChart([...steady, -20, ...Array.from({ length: 7 }, () => 5)], { baseline: 8 });
    expect(chart.signals).toContainEqual({ index: 8, rule: "beyond-limit", side: "below" });
    expect(chart.signals).toContainEqual({ index: 15, rule: "run-of-eight", side: "below" });
    expect(chart.signals.filter((s) => s.rule === "run-of-eight")).toHaveLength(1);
  });

  it("a point on the centre line ends a run", () => {
    const baseline = [4, 6, 4, 6, 4, 6, 4, 6]; // centre 5
    const run = [6, 6, 6, 5, 6, 6, 6, 6];
    const chart = individualsChart([...baseline, ...run], { baseline: 8 });
    expect(chart.signals.filter((s) => s.rule === "run-of-eight")).toEqual([]);
  });

  it("equal values give limits on the centre and no signal", () => {
    const chart = individualsChart(Array.from({ length: 9 }, () => 0.1));
    expect(chart).toMatchObject({ center: 0.1, upper: 0.1, lower: 0.1, signals: [] });
  });

  it.each([
    ["one point", () => individualsChart([1])],
    ["no number", () => individualsChart([1, Number.NaN])],
    ["a baseline longer than the values", () => individualsChart([1, 2, 3], { baseline: 4 })],
    ["a baseline of one", () => individualsChart([1, 2, 3], { baseline: 1 })],
  ])("%s throws RangeError", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});
