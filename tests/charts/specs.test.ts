import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import * as vegaLite from "vega-lite";
import { chartFermentation, chartLedger, chartPairedScores, chartRelation, chartSeasonFigure } from "../../src/charts/index.js";
import { deepFreeze, everyChart } from "./every-chart.js";
import { attribute, ledger, relation, seasonSeries, timeline } from "./sample-reports.js";

const require = createRequire(import.meta.url);

interface Validator {
  (value: unknown): boolean;
  readonly errors?: unknown;
}

/** The JSON Schema that vega-lite ships (draft 07), with the validator that the linter brings. */
function specValidator(): Validator {
  const Ajv = require("ajv") as new (options: object) => { compile: (schema: unknown) => Validator };
  const schema: unknown = JSON.parse(readFileSync(require.resolve("vega-lite/vega-lite-schema.json"), "utf8"));
  return new Ajv({ unknownFormats: "ignore", logger: false }).compile(schema);
}

const drawings = everyChart().flatMap((chart) => [
  { name: `${chart.id}, wide`, chart, drawing: chart.wide }, { name: `${chart.id}, narrow`, chart, drawing: chart.narrow },
]);

describe("a chart's spec", () => {
  const validate = specValidator();

  it("is told from one that isn't valid by the schema used here", () => {
    expect(validate({ ...everyChart()[0]?.wide.spec, width: "wide" })).toBe(false);
  });

  it.each(drawings)("passes the vega-lite schema: $name", ({ drawing }) => {
    expect(validate(drawing.spec), JSON.stringify(validate.errors)).toBe(true);
  });

  it.each(drawings)("compiles without a warning: $name", ({ drawing }) => {
    const said: unknown[] = [];
    const note = (...words: readonly unknown[]): object => {
      said.push(...words);
      return logger;
    };
    const logger = { level: () => logger, warn: note, error: note, info: () => logger, debug: () => logger };
    vegaLite.compile(drawing.spec, { logger: logger as never });
    expect(said).toEqual([]);
  });

  it.each(drawings)("holds finite numbers only: $name", ({ drawing }) => {
    // JSON turns NaN and Infinity into null; a break in a line is the only null there is.
    const text = JSON.stringify(drawing.spec, (_, value: unknown) => typeof value === "number" && !Number.isFinite(value) ? "not finite" : value);
    expect(text).not.toContain("not finite");
    expect(text).not.toMatch(/NaN|undefined/);
  });

  it.each(drawings)("names a unit or a count on every quantity axis: $name", ({ drawing }) => {
    const text = JSON.stringify(drawing.spec);
    expect(text).toMatch(/°C|°F|Specific gravity|, L"|, gal"|g\/L|, %"|score from 0 to 10|points on the score|"Tasters"/);
  });

  it.each(drawings)("keeps its labels inside the drawing: $name", ({ drawing }) => {
    const { padding } = drawing.spec as unknown as { padding: { left: number; top: number } };
    const labels = (drawing.spec as unknown as { datasets: { labels: { x: number; y: number; text: string; align: string }[] } }).datasets.labels;
    expect(labels.length).toBeGreaterThan(0);
    for (const label of labels) {
      expect(label.x + padding.left, label.text).toBeGreaterThanOrEqual(0);
      expect(label.x + padding.left, label.text).toBeLessThanOrEqual(drawing.width);
      expect(label.y + padding.top, label.text).toBeGreaterThan(8);
      expect(label.y + padding.top, label.text).toBeLessThan(drawing.height);
    }
  });
});

describe("a chart", () => {
  it("leaves its report unchanged", () => {
    const frozen = deepFreeze({ timeline: timeline(), ledger: ledger(), series: seasonSeries(), relation: relation(), attribute: attribute() });
    expect(chartFermentation(frozen.timeline, { batch: "A" })).toBeDefined();
    expect(chartLedger(frozen.ledger, { batch: "A" })).toBeDefined();
    expect(chartSeasonFigure(frozen.series)).toBeDefined();
    expect(chartRelation(frozen.relation)).toBeDefined();
    expect(chartPairedScores(frozen.attribute)).toBeDefined();
  });

  it("is the same chart for the same report", () => {
    expect(JSON.stringify(everyChart())).toBe(JSON.stringify(everyChart()));
  });

  it.each(everyChart())("has a title, a description and a table as wide as its head: $id", (chart) => {
    expect(chart.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(chart.title.length).toBeGreaterThan(5);
    expect(chart.description.length).toBeGreaterThan(20);
    expect(chart.table.rows.length).toBeGreaterThan(0);
    for (const row of chart.table.rows) expect(row).toHaveLength(chart.table.columns.length);
    expect(new Set(chart.table.columns.map((column) => column.title)).size).toBe(chart.table.columns.length);
  });
});
