import { describe, expect, it } from "vitest";
import { chartControl, chartForest, chartGroups, chartVersionFigure, renderChart, type Drawing } from "../../src/charts/index.js";
import { controlSeries, groups, pooled, seasonSeries, versionFigure } from "./sample-reports.js";

type Rows = readonly Readonly<Record<string, number | string | boolean>>[];

function rowsOf(drawing: Drawing | undefined, name: string): Rows {
  return (drawing?.spec as unknown as { datasets: Record<string, Rows> }).datasets[name] ?? [];
}

const textsOf = (drawing: Drawing | undefined): unknown[] => rowsOf(drawing, "labels").map((label) => label["text"]);

describe("the control chart", () => {
  it("draws centre and limits where the report puts them, and rings the batch that signals", () => {
    const { wide } = chartControl(controlSeries()) ?? {};
    expect(textsOf(wide)).toEqual(expect.arrayContaining(["upper", "centre", "lower", "TP-12"]));
    const [upper, lower] = rowsOf(wide, "limits").map((line) => line["y"] as number);
    const [center] = rowsOf(wide, "centers").map((line) => line["y"] as number);
    // Limits 84 and 65 around 74.5, the middle between them: so are their lines.
    expect(center).toBeCloseTo(((upper ?? 0) + (lower ?? 0)) / 2, 9);
    expect(rowsOf(wide, "signals").map((point) => point["y"])).toEqual([90]);
    expect(rowsOf(wide, "ranges")).toHaveLength(15);
  });

  it("draws no limits for so few batches that there are none", () => {
    const { wide } = chartControl(controlSeries(7, "none")) ?? {};
    expect([...rowsOf(wide, "limits"), ...rowsOf(wide, "centers"), ...rowsOf(wide, "signals")]).toEqual([]);
    expect(rowsOf(wide, "values")).toHaveLength(7);
  });

  it("names as many of a hundred batches as fit, the one that signals among them", () => {
    const { narrow } = chartControl(controlSeries(100)) ?? {};
    const names = textsOf(narrow).filter((text) => String(text).startsWith("TP-"));
    expect(names.length).toBeLessThan(10);
    expect(names).toContain("TP-12");
  });

  it("says which batch signals in its table, and is left out where the report has no control", () => {
    expect(chartControl(controlSeries())?.table.rows[11]?.at(-1)).toBe("above the limit");
    expect(chartControl(seasonSeries())).toBeUndefined();
  });
});

describe("the forest", () => {
  it("draws a lozenge as wide as the pooled interval, its middle at the estimate", () => {
    expect(rowsOf(chartForest(pooled())?.wide, "pooled").map((corner) => corner["x"])).toEqual([1.2, 1.6, 2]);
  });

  it("gives each batch its interval, one taster's batch only its point", () => {
    const { wide, table } = chartForest(pooled()) ?? {};
    expect(rowsOf(wide, "points")).toHaveLength(7);
    expect(rowsOf(wide, "spans")).toHaveLength(6);
    expect(table?.rows[0]).toEqual(["TP-01", "8", "1.0", "", ""]);
    expect(table?.rows.slice(-2).map(([name]) => name)).toEqual(["all together", "one more batch"]);
  });

  it("shows what can't be pooled without a lozenge", () => {
    const { attribute, says, tastings } = pooled();
    const { wide } = chartForest({ attribute, says, tastings: tastings.slice(0, 3) }) ?? {};
    expect(rowsOf(wide, "pooled")).toEqual([]);
    expect(rowsOf(wide, "points")).toHaveLength(3);
  });
});

describe("small charts and groups", () => {
  it("are drawn without a number gone wrong", async () => {
    for (const chart of [chartGroups(groups()), chartVersionFigure(versionFigure()), chartVersionFigure(versionFigure(1)), chartControl(controlSeries(2, "none")), chartForest(pooled())]) {
      if (chart === undefined) throw new Error("there is nothing to draw");
      expect(await renderChart(chart, { prefix: "a" })).not.toMatch(/NaN|Infinity|undefined/u);
    }
  });

  it("stand each group's mean over its own rows", () => {
    const { wide } = chartGroups(groups()) ?? {};
    expect(rowsOf(wide, "means").map((mean) => mean["x"])).toEqual([2.5, 1.5]);
    const [first, second] = rowsOf(wide, "means");
    expect(first?.["y2"]).toBeLessThanOrEqual(second?.["y"] as number);
  });
});
