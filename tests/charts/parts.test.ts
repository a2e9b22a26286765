import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chartContactTemperature, chartDiscrimination, chartFermentation, chartLedger, chartPairedScores, chartPreference, chartRelation, chartSeasonFigure,
  renderChart, type Chart, type Drawing,
} from "../../src/charts/index.js";
import { textWidthPx } from "../../src/charts/text-width.js";
import type { TimelineReport } from "../../src/report/index.js";
import { attribute, count, dryHops, ledger, noise, relation, run, seasonSeries, timeline } from "./sample-reports.js";

type Datasets = Readonly<Record<string, readonly Readonly<Record<string, number | string | boolean | null>>[]>>;

function datasets(drawing: Drawing | undefined): Datasets {
  return (drawing?.spec as unknown as { datasets: Datasets }).datasets;
}

function omit<Whole extends object>(whole: Whole, ...keys: (keyof Whole)[]): Whole {
  return Object.fromEntries(Object.entries(whole).filter(([key]) => !keys.includes(key as keyof Whole))) as Whole;
}

function without(...keys: (keyof TimelineReport)[]): TimelineReport {
  return omit(timeline(), ...keys);
}

async function draws(chart: Chart | undefined): Promise<string> {
  if (chart === undefined) throw new Error("there is nothing to draw");
  const markup = await renderChart(chart, { prefix: "a" });
  expect(markup).not.toMatch(/NaN|Infinity|undefined/);
  return markup;
}

/** What each label covers, px: a line of letters as wide as they need. */
function labelBoxes(drawing: Drawing) {
  return (datasets(drawing)["labels"] ?? []).map((label) => {
    const [x, y, text] = [label["x"] as number, label["y"] as number, label["text"] as string];
    return { text, left: x, right: x + textWidthPx(text), top: y - 11, bottom: y + 3 };
  });
}

const batch = { batch: "TP-03" };

describe("the fermentation chart", () => {
  it("stacks temperature above gravity over one axis of days", () => {
    const { params } = chartFermentation(timeline(), batch)?.wide.spec as unknown as { params: { name: string; value: number }[] };
    const value = (name: string): number => params.find((param) => param.name === name)?.value ?? NaN;
    expect(value("temperatureTop")).toBeLessThan(value("temperatureBottom"));
    expect(value("temperatureBottom")).toBeLessThan(value("gravityTop"));
    expect(value("dayHigh")).toBeCloseTo(387 / 24, 6);
  });

  it("breaks the line where there is no log, hatches the gap and names it", () => {
    const { temperatureLine = [], hatches = [], labels = [] } = datasets(chartFermentation(timeline(), batch)?.wide);
    expect(temperatureLine.filter((row) => row["y"] === null)).toHaveLength(1);
    expect(temperatureLine.some((row) => (row["x"] as number) > 5.01 && (row["x"] as number) < 6.16 && row["y"] !== null)).toBe(false);
    expect(hatches.length).toBeGreaterThan(10);
    expect(labels.map((label) => label["text"])).toContain("no log");
  });

  it.each(["wide", "narrow"] as const)("labels every event on the axis, says what comes later, and overlaps no labels: %s", (width) => {
    const texts = (datasets(chartFermentation(timeline(), batch)?.[width])["labels"] ?? []).map((label) => String(label["text"]));
    for (const { label, kind } of timeline().events) {
      if (kind !== "reading" && kind !== "tasting") expect(texts).toContain(label);
    }
    expect(texts).toContain("later: tasting, day 29");
  });

  it("keeps all its labels apart, however much happened", () => {
    const kinds = ["sample", "dump", "dry-hop", "addition", "transfer", "crash", "package", "tasting", "reading"] as const;
    const event = fc.record({ kind: fc.constantFrom(...kinds), hour: fc.integer({ min: 0, max: 600 }), label: fc.string({ unit: "grapheme-ascii", minLength: 1, maxLength: 50 }) });
    const phase = fc.record({ kind: fc.constantFrom("fermentation", "dry hop", "crash"), fromHour: fc.integer({ min: 0, max: 300 }), hours: fc.integer({ min: 1, max: 90 }) });
    fc.assert(fc.property(fc.array(event, { maxLength: 25 }), fc.array(phase, { maxLength: 5 }), (events, phases) => {
      const chart = chartFermentation({
        ...timeline(), events: events.map((each) => ({ ...each, at: "", dateOnly: false })), phases: phases.map(({ hours, ...each }) => ({ ...each, toHour: each.fromHour + hours })),
      }, batch);
      for (const drawing of [chart!.wide, chart!.narrow]) {
        const boxes = labelBoxes(drawing);
        boxes.forEach((box, index) => {
          for (const other of boxes.slice(0, index)) {
            const apart = box.right <= other.left || other.right <= box.left || box.bottom <= other.top || other.bottom <= box.top;
            expect(apart, `"${box.text}" on "${other.text}"`).toBe(true);
          }
        });
      }
    }), { numRuns: 40 });
  });

  it("draws each reading by hand as a point and the set point from the crash on", () => {
    const { gravityByHand = [], setPoint = [], rules = [] } = datasets(chartFermentation(timeline(), batch)?.wide);
    expect(gravityByHand.map((row) => row["y"])).toEqual([1.0125, 1.0105, 1.0105, 1.0105]);
    expect(setPoint).toHaveLength(1);
    expect(rules.some((row) => Math.abs((row["x"] as number) - (setPoint[0]?.["x"] as number)) < 1e-9)).toBe(true);
  });

  it("marks what is only planned apart from what was done", () => {
    const report = { ...timeline(), events: timeline().events.map((event) => event.kind === "transfer" ? { ...event, planned: true } : event) };
    const { plannedRules = [], labels = [] } = datasets(chartFermentation(report, batch)?.wide);
    expect(plannedRules.length).toBeGreaterThan(0);
    expect(labels.map((label) => label["text"])).toContain("18.9 L transferred (planned)");
  });

  it.each([
    ["no gravity", without("gravity", "gravityReadings"), "Temperature, TP-03"],
    ["no temperature", without("temperature"), "Gravity, TP-03"],
    ["readings by hand only", without("temperature", "gravity", "crashSet"), "Gravity, TP-03"],
    ["no events and no phases", { ...timeline(), events: [], phases: [], gaps: [] }, "Temperature and gravity, TP-03"],
    ["one point", { ...without("gravity", "gravityReadings"), events: [], phases: [], gaps: [], temperature: { unit: "C", source: "log", runs: [[[0, 18]]] } }, "Temperature, TP-03"],
    ["equal values", { ...without("gravity", "gravityReadings", "crashSet"), temperature: { unit: "C", source: "log", runs: [run(0, 100, 1, () => 18)] } }, "Temperature, TP-03"],
    ["rows before pitching", { ...without("gravity"), temperature: { unit: "C", source: "log", runs: [run(-30, 100, 1, () => 18)] } }, "Temperature and gravity, TP-03"],
    ["an empty run", { ...without("gravity"), temperature: { unit: "C", source: "log", runs: [[], run(0, 50, 1, () => 18), []] } }, "Temperature and gravity, TP-03"],
  ] as [string, TimelineReport, string][])("is drawn with %s", async (_, report, title) => {
    const chart = chartFermentation(report, batch);
    expect(chart?.title).toBe(title);
    await draws(chart);
  });

  it("isn't drawn where nothing was read", () => {
    expect(chartFermentation(without("temperature", "gravity", "gravityReadings"), batch)).toBeUndefined();
    expect(chartFermentation({ ...without("gravity", "gravityReadings"), temperature: { unit: "C", source: "log", runs: [] } }, batch)).toBeUndefined();
  });

  it("is drawn from 40,000 rows without losing the highest", () => {
    const random = noise(3);
    const runs = [run(0, 400, 0.01, () => 18 + random())];
    const top = runs[0]?.reduce((most, [, value]) => Math.max(most, value), 0) ?? NaN;
    const { temperatureLine = [] } = datasets(chartFermentation({ ...timeline(), temperature: { unit: "C", source: "log", runs } }, batch)?.wide);
    expect(temperatureLine.length).toBeLessThan(1400);
    expect(temperatureLine.reduce((most, row) => Math.max(most, row["y"] as number), 0)).toBe(top);
  });

  it("has a row a day in its table", () => {
    const table = chartFermentation(timeline(), batch)?.table;
    expect(table?.columns.map((column) => column.title)).toEqual(["day", "lowest", "highest", "gravity, log", "gravity, by hand", "what happened"]);
    expect(table?.rows.map((row) => row[0])).toEqual([...Array.from({ length: 17 }, (_, day) => String(day)), "28"]);
    // Day 3 runs from hour 72 to 96: the reading by hand at hour 88 is its last.
    expect(table?.rows[3]?.[4]).toBe("1.0125");
  });
});

describe("the ledger chart", () => {
  it("steps from what went in down to what was packaged, each part as long as it is large", () => {
    const { bars = [] } = datasets(chartLedger(ledger(), batch)?.wide);
    const length = (index: number): number => (bars[index]?.["to"] as number) - (bars[index]?.["from"] as number);
    expect(bars).toHaveLength(1 + ledger().entries.length);
    expect(length(0)).toBeCloseTo(21.7, 9);
    // The parts of a ledger sum to what went in (design of the ledger).
    expect(bars.slice(1).reduce((sum, _, index) => sum + length(index + 1), 0)).toBeCloseTo(21.7, 9);
    bars.slice(1, -1).forEach((bar, index) => { expect(bar["from"]).toBeCloseTo(bars[index + 2]?.["to"] as number, 9); });
    expect(bars.at(-1)?.["from"]).toBe(0);
    expect(bars.at(-1)?.["to"]).toBeCloseTo(18.7, 9);
  });

  it("says more beer than went in by a step upwards", async () => {
    const entries = [{ to: "package" as const, litres: 22, what: "keg", from: [] }, { to: "unaccounted" as const, litres: -0.3, from: [] }];
    const chart = chartLedger({ into: 21.7, entries, says: "More came out than went in." }, batch);
    expect(chart?.table.rows.map((row) => row[1])).toEqual(["21.7 L", "+0.3 L", "22.0 L"]);
    await draws(chart);
  });

  it("gathers many samples in one row", () => {
    const entries = Array.from({ length: 9 }, () => ({ to: "samples" as const, litres: 0.1, from: [] }));
    const chart = chartLedger({ into: 20, entries: [...entries, { to: "package", litres: 19.1, from: [] }], says: "It closes." }, batch);
    expect(chart?.table.rows.map((row) => row[0])).toEqual(["into the fermenter", "sample, in 9 draws", "packaged"]);
  });

  it("isn't drawn before anything left", () => {
    expect(chartLedger({ into: 20, entries: [], says: "" }, batch)).toBeUndefined();
  });
});

describe("the season's charts", () => {
  it("put batches side by side while their numbers fit, else one below the other", () => {
    const width = (batches: number): number => (datasets(chartSeasonFigure(seasonSeries(batches))?.wide)["points"] ?? []).length;
    expect(width(14)).toBe(14);
    const few = chartSeasonFigure(seasonSeries(14))?.wide.height ?? NaN;
    const many = chartSeasonFigure(seasonSeries(40))?.wide.height ?? NaN;
    expect(many).toBeGreaterThan(2 * few);
  });

  it("draw one batch, and batches without limits", async () => {
    await draws(chartSeasonFigure({ ...seasonSeries(1), points: seasonSeries(1).points.map((point) => omit(point, "plusMinus")) }));
    expect(chartSeasonFigure({ ...seasonSeries(1), points: [] })).toBeUndefined();
  });

  it("list batches without the figure, with the reason, in the table", () => {
    expect(chartSeasonFigure(seasonSeries())?.table.rows.at(-1)).toEqual(["LW-01", "", "dry_hops isn't recorded"]);
  });

  it("draw a relation with or without a line, and with one point", async () => {
    const unfitted = omit(relation(), "line");
    expect(datasets(chartRelation(unfitted)?.wide)["line"]).toEqual([]);
    await draws(chartRelation({ ...unfitted, points: unfitted.points.slice(0, 1) }));
    expect(chartRelation({ ...relation(), points: [] })).toBeUndefined();
  });

  it("keep a wide interval from squeezing the points", () => {
    const wild = { ...relation(), line: relation().line!.map((each) => ({ ...each, low: each.y - 100, high: each.y + 100 })) };
    const { params } = chartRelation(wild)?.wide.spec as unknown as { params: { name: string; value: number }[] };
    const low = params.find((param) => param.name === "yLow")?.value ?? NaN;
    expect(low).toBeGreaterThan(-5);
    for (const row of datasets(chartRelation(wild)?.wide)["line"] ?? []) expect(row["low"]).toBeGreaterThanOrEqual(low);
  });
});

describe("the tasting's charts", () => {
  it("show every taster and the means with their interval", async () => {
    const { before = [], after = [], interval = [] } = datasets(chartPairedScores(attribute())?.wide);
    expect(before.map((row) => row["x"])).toEqual([3, 4, 2, 5, 3, 4, 2, 4, 3.375]);
    expect(after.map((row) => row["x"])).toEqual([5, 6, 6, 5, 4, 7, 5, 4, 5.25]);
    // Mean before plus the interval of the mean difference: 3.375 + 0.7 and 3.375 + 3.05.
    expect(interval[0]?.["from"]).toBeCloseTo(4.075, 9);
    expect(interval[0]?.["to"]).toBeCloseTo(6.425, 9);
    expect(chartPairedScores({ ...attribute(), pairs: [] })).toBeUndefined();
    await draws(chartPairedScores({ ...attribute(), pairs: [["T01", 2.5, 4]] }));
  });

  it("hold a count against chance, and don't draw none", async () => {
    const chart = chartDiscrimination(count(), { test: "triangle" });
    expect(datasets(chart?.wide)["chance"]?.[0]?.["x"]).toBeCloseTo(100 / 3, 9);
    expect(chart?.description).toBe("9 of 12 tasters were right, 75 % (95 % interval 43 to 95 %); guessing gives 33 %.");
    await draws(chartDiscrimination({ ...count(), chance: 0.5, correct: 0, share: 0, low: 0, high: 0.26 }, { test: "duo-trio" }));
    expect(chartDiscrimination({ ...count(), tasters: 0 }, { test: "triangle" })).toBeUndefined();
  });

  it("count votes one by one, and leave no preference by itself", async () => {
    const chart = chartPreference({ before: 2, after: 8, none: 2, p: 0.11 });
    expect(datasets(chart?.wide)["votes"]).toHaveLength(12);
    expect(chart?.table.rows).toEqual([["before", "2"], ["after", "8"], ["no preference", "2"]]);
    await draws(chartPreference({ before: 0, after: 0, none: 1, p: 1 }));
    expect(chartPreference({ before: 0, after: 0, none: 0, p: 1 })).toBeUndefined();
  });

  it("give a row to each dry hop with a known temperature", () => {
    expect(chartContactTemperature(dryHops(), batch)?.table.rows).toEqual([["92 g Cascade", "13.1 (12.4 to 14.2)"], ["Chinook", "12.8 (12.4 to 13.3)"]]);
    expect(chartContactTemperature(dryHops().map((dryHop) => omit(dryHop, "temperatureMean")), batch)).toBeUndefined();
  });
});
