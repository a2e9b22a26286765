import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeFlags } from "../../src/charts/flag-labels.js";
import { placeNames } from "../../src/charts/point-labels.js";
import { cutRule } from "../../src/charts/rule-segments.js";
import { placeSpans } from "../../src/charts/span-labels.js";
import { shortenText, textWidthPx } from "../../src/charts/text-width.js";

const PLOT_PX = 266;
const flags = fc.array(fc.record({ x: fc.double({ min: 0, max: PLOT_PX, noNaN: true }), widthPx: fc.double({ min: 10, max: 200, noNaN: true }) }), { maxLength: 40 });

describe("labels over rules", () => {
  it("never overlap and never leave the plot, however many events there are", () => {
    fc.assert(fc.property(flags, (events) => {
      const places = placeFlags(events, PLOT_PX);
      expect(places).toHaveLength(events.length);
      places.forEach((place, index) => {
        expect(place.left).toBeGreaterThanOrEqual(0);
        expect(place.right).toBeLessThanOrEqual(PLOT_PX + 1e-9);
        expect(place.right - place.left).toBeCloseTo(events[index]?.widthPx ?? NaN, 9);
        for (const other of places.slice(0, index)) {
          expect(place.row !== other.row || place.right <= other.left || other.right <= place.left).toBe(true);
        }
      });
    }), { numRuns: 60 });
  });

  it("stand within reach of their rule: beside it, or above it where neither side has room", () => {
    fc.assert(fc.property(flags, (events) => {
      placeFlags(events, PLOT_PX).forEach((place, index) => {
        const x = events[index]?.x ?? NaN;
        expect(Math.max(place.left - x, x - place.right)).toBeLessThanOrEqual(5);
      });
    }), { numRuns: 60 });
  });

  it("share a row where there is room, and read downwards in order where events stand together", () => {
    expect(placeFlags([{ x: 0, widthPx: 60 }, { x: 100, widthPx: 60 }], PLOT_PX).map((place) => place.row)).toEqual([0, 0]);
    expect(placeFlags([{ x: 50, widthPx: 60 }, { x: 50, widthPx: 60 }, { x: 50, widthPx: 60 }], 120).map((place) => place.row)).toEqual([2, 1, 0]);
  });
});

describe("names of stretches", () => {
  it("overlap neither each other nor another stretch of their row", () => {
    const spans = fc.array(fc.record({ from: fc.integer({ min: 0, max: 600 }), length: fc.integer({ min: 1, max: 300 }), widthPx: fc.integer({ min: 20, max: 90 }) }), { maxLength: 12 });
    fc.assert(fc.property(spans, (raw) => {
      const given = raw.map(({ from, length, widthPx }) => ({ from, to: Math.min(620, from + length), widthPx }));
      const places = placeSpans(given, 620).map((place, index) => {
        const { from, to, widthPx } = given[index]!;
        return { row: place.row, nameLeft: place.left, nameRight: place.left + widthPx, left: Math.min(from, place.left), right: Math.max(to, place.left + widthPx) };
      });
      places.forEach((place, index) => {
        for (const other of places.slice(0, index)) {
          expect(place.row !== other.row || place.right <= other.left || other.right <= place.left).toBe(true);
        }
        expect(place.nameLeft).toBeGreaterThanOrEqual(0);
        expect(place.nameRight).toBeLessThanOrEqual(620);
      });
    }), { numRuns: 60 });
  });
});

describe("names of points", () => {
  const points = fc.array(fc.record({ x: fc.integer({ min: 0, max: 600 }), y: fc.integer({ min: 20, max: 300 }), widthPx: fc.integer({ min: 20, max: 60 }) }), { maxLength: 40 });
  const plot = { width: 620, height: 320 };

  it("overlap neither names nor points", () => {
    fc.assert(fc.property(points, (given) => {
      const boxes = placeNames(given, plot).flatMap((place, index) => place === undefined ? [] : [{ left: place.x, right: place.x + given[index]!.widthPx, top: place.y - 10, bottom: place.y + 2 }]);
      boxes.forEach((box, index) => {
        for (const other of boxes.slice(0, index)) {
          expect(box.right <= other.left || other.right <= box.left || box.bottom <= other.top || other.bottom <= box.top).toBe(true);
        }
        expect(given.some(({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.bottom)).toBe(false);
      });
    }), { numRuns: 60 });
  });

  it("are all there where there is room", () => {
    const spread = Array.from({ length: 20 }, (_, index) => ({ x: 20 + index % 5 * 120, y: 40 + Math.floor(index / 5) * 70, widthPx: 40 }));
    expect(placeNames(spread, plot).every((place) => place !== undefined && place.leader === undefined)).toBe(true);
  });

  it("step aside for the fitted line", () => {
    const line = Array.from({ length: 40 }, (_, index) => ({ x: 100 + index * 3, y: 100 }));
    const [place] = placeNames([{ x: 100, y: 100, widthPx: 40 }], plot, line);
    expect(place?.x).toBeLessThan(100);
  });
});

describe("a rule", () => {
  it("is interrupted for every label in its way", () => {
    const boxes = [{ left: 0, right: 50, top: 10, bottom: 20 }, { left: 40, right: 60, top: 15, bottom: 30 }, { left: 60, right: 90, top: 50, bottom: 60 }];
    expect(cutRule(45, 0, 100, boxes)).toEqual([[0, 10], [30, 100]]);
    expect(cutRule(95, 0, 100, boxes)).toEqual([[0, 100]]);
    expect(cutRule(45, 12, 18, boxes)).toEqual([]);
  });
});

describe("room for letters", () => {
  const { widths } = JSON.parse(readFileSync(new URL("fixtures/source-serif-4-widths.json", import.meta.url), "utf8")) as { widths: Record<string, number> };

  it("is never less than the house face needs, and seldom a fifth more", () => {
    for (const [letter, thousandths] of Object.entries(widths)) {
      expect(textWidthPx(letter, 1000), letter).toBeGreaterThanOrEqual(thousandths);
    }
    for (const text of ["110 g Cascade", "0.5 L sample", "18.9 L transferred", "crash to 2 °C", "12.0 ± 0.4 g/L"]) {
      const exact = [...text].reduce((sum, letter) => sum + (widths[letter] ?? 0), 0);
      expect(textWidthPx(text, 1000) / exact, text).toBeLessThan(1.2);
    }
  });

  it("shortens what doesn't fit, and nothing else", () => {
    fc.assert(fc.property(fc.string({ unit: "grapheme", minLength: 1, maxLength: 60 }), fc.integer({ min: 30, max: 300 }), (text, room) => {
      const short = shortenText(text, room);
      expect(textWidthPx(short)).toBeLessThanOrEqual(room);
      if (textWidthPx(text) <= room) expect(short).toBe(text);
      else expect(short.endsWith("…")).toBe(true);
    }));
  });
});
