import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { FIGURE_TABLE } from "../../src/report/index.js";
import { Formula } from "../../src/site/components/formula.js";
import { relativeLink } from "../../src/site/page/relative-link.js";
import { printedDate, shortDate } from "../../src/site/text/printed-date.js";
import { printedProbability } from "../../src/site/text/printed-quantity.js";
import { lowerFirst, printedWords, sentence } from "../../src/site/text/printed-words.js";
import { plainNumber } from "../../src/site/text/plain-number.js";
import { bandSketch } from "../../src/site/views/band-sketch.js";
import { PART_FIGURES, WORKING_ONLY } from "../../src/site/views/part-figures.js";
import { indexWorking, isSum } from "../../src/site/views/working-index.js";
import { fullBatch } from "./sample-full.js";

describe("dates", () => {
  it("are printed as civil times, never shifted to another zone", () => {
    expect(printedDate("2026-03-07 00:30")).toBe("7 March 2026, 00:30");
    expect(printedDate("2026-12-31")).toBe("31 December 2026");
    expect(shortDate("2026-03-07")).toBe("7 Mar 2026");
    expect(printedDate("some time in May")).toBe("some time in May");
  });
});

describe("words of a record", () => {
  it("get their degree signs and readable dates", () => {
    expect(printedWords("66.5 C for 60 min, pitched 2026-01-24 16:10")).toBe("66.5\u00A0°C for 60 min, pitched 24 January 2026, 16:10");
    expect(printedWords("20 g Crystal C, lot 7C2, 1.3 mL/100g")).toBe("20 g Crystal C, lot 7C2, 1.3 mL/100\u00A0g");
  });

  it("become sentences and parts of sentences", () => {
    expect(sentence("from memory")).toBe("From memory.");
    expect(sentence("Published!")).toBe("Published!");
    expect(lowerFirst("Alcohol by volume")).toBe("alcohol by volume");
    expect(lowerFirst("CO2 left")).toBe("CO2 left");
  });
});

describe("numbers outside figures", () => {
  it("are printed whole: bounds and check values as their source gives them", () => {
    expect(plainNumber(28.349523125)).toBe("28.349523125");
    expect(plainNumber(-40)).toBe("−40");
    expect(plainNumber(1000000)).toBe("1\u202F000\u202F000");
    expect(plainNumber(Infinity)).toBe("no bound");
  });

  it("of chance keep two digits and never a row of noughts", () => {
    expect([0.00394, 0.0000012, 0.5, 0.9999].map(printedProbability)).toEqual(["0.0039", "under 0.001", "0.5", "over 0.999"]);
  });
});

describe("a formula", () => {
  const set = (text: string): string => renderToString(h(Formula, { text }));

  it("raises powers and lowers indices, with true minus signs", () => {
    expect(set("0.000125^(S - 1)")).toBe("0.000125<sup>S − 1</sup>");
    expect(set("b = (V1 - V2) / h")).toBe("b = (V<sub>1</sub> − V<sub>2</sub>) / h");
    expect(set("630.272 S^2 + e^(-0.04 t)")).toBe("630.272 S<sup>2</sup> + e<sup>−0.04 t</sup>");
  });

  it("is text: markup in it stays text", () => {
    expect(set("<b>x^2</b>")).toBe("&lt;b>x<sup>2</sup>&lt;/b>");
  });
});

describe("links inside the site", () => {
  it("are relative and name the file, from any folder", () => {
    expect(relativeLink("batches/tp-03.html", "methods/abv.html")).toBe("../methods/abv.html");
    expect(relativeLink("batches/tp-03.html", "batches/tp-02.html#aim")).toBe("tp-02.html#aim");
    expect(relativeLink("batches/tp-03.html", "batches/tp-03.html#aim")).toBe("#aim");
    expect(relativeLink("index.html", "batches/index.html")).toBe("batches/index.html");
    expect(relativeLink("data/fermentation/a.csv", "index.html")).toBe("../../index.html");
  });
});

describe("a style's band", () => {
  it("holds the range and the batch's interval on one scale, in order", () => {
    const sketch = bandSketch({ figure: "abv", unit: "%", low: 4.5, high: 6.2, value: 7, plusMinus: 0.3, verdict: "fail", says: "" });
    const places = [0, sketch.bandFrom, sketch.bandTo, sketch.interval?.[0] ?? NaN, sketch.point ?? NaN, sketch.interval?.[1] ?? NaN, 120];
    expect(places).toEqual(places.toSorted((one, other) => one - other));
  });

  it("of no width, or of a figure that isn't known, is still drawn", () => {
    const sketch = bandSketch({ figure: "abv", unit: "%", low: 5, high: 5, verdict: "unknown", says: "" });
    expect(sketch.point).toBeUndefined();
    expect(Number.isFinite(sketch.bandFrom)).toBe(true);
  });
});

describe("the working", () => {
  it("tells a figure once and knows it again inside others, by id or by method, value and unit", () => {
    const index = indexWorking(fullBatch);
    expect(index.figureOf({ label: "original-gravity", kind: "figure", value: 1.0495, unit: "SG" }, "abv")).toBe("original-gravity");
    expect(index.figureOf({ label: "Alcohol by volume", kind: "step", value: 5.11, unit: "%", method: "alcohol-by-volume" }, "energy")).toBe("abv");
    expect(index.figureOf({ label: "abv", kind: "figure", value: 5.11, unit: "%", method: "alcohol-by-volume" }, "abv")).toBeUndefined();
    expect(index.figureOf({ label: "fermenter.gravity", kind: "reading", value: 1.0495, unit: "SG" }, "abv")).toBeUndefined();
  });

  it("knows a sum by its parts", () => {
    const part = (value: number) => ({ label: "part", kind: "step" as const, value, unit: "IBU" });
    expect(isSum({ label: "whole", kind: "figure", value: 31.5, unit: "IBU", inputs: [part(23), part(8.5)] })).toBe(true);
    expect(isSum({ label: "whole", kind: "figure", value: 30, unit: "IBU", inputs: [part(23), part(8.5)] })).toBe(false);
  });
});

describe("the parts of a batch page", () => {
  it("tell every figure there is", () => {
    const told = new Set([...Object.values(PART_FIGURES).flatMap((ids) => [...ids] as string[]), ...WORKING_ONLY]);
    expect(FIGURE_TABLE.map(({ id }) => id).filter((id) => !told.has(id))).toEqual([]);
    expect([...told].filter((id) => !FIGURE_TABLE.some((figure) => figure.id === id))).toEqual([]);
  });
});
