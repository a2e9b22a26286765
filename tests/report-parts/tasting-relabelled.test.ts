import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RankRow, ScoreRow } from "../../src/records/index.js";
import { tastingReports } from "../../src/report/tasting.js";
import type { AttributeReport, TastingReport } from "../../src/report/types.js";
import { batchOf, ranksOf, recordOf, tastingOf } from "./records.js";

const ATTRIBUTES = ["pine", "orange peel", "bitterness"];

interface Names {
  readonly before: string;
  readonly after: string;
  readonly taster: (code: string) => string;
}

const PLAIN: Names = { before: "before", after: "after", taster: (code) => code };

/** Half points, so that sums hold exactly in whatever order they are made. */
const halves = fc.integer({ min: 0, max: 20 }).map((points) => points / 2);
const sheet = fc.array(fc.array(fc.tuple(halves, halves), { minLength: ATTRIBUTES.length, maxLength: ATTRIBUTES.length }), { minLength: 1, maxLength: 9 });

function scoreRows(tasters: readonly (readonly (readonly [number, number])[])[], { before, after, taster }: Names): ScoreRow[] {
  return tasters.flatMap((row, index) => row.flatMap(([low, high], place) => {
    const common = { taster: taster(`T${index + 1}`), attribute: ATTRIBUTES[place] ?? "", serving: 1 };
    return [{ ...common, sample: before, score: low }, { ...common, sample: after, score: high }];
  }));
}

function told({ before, after }: Names, rows: { scores?: readonly ScoreRow[]; ranking?: readonly RankRow[] }): TastingReport {
  const tasting = tastingOf({
    samples: [{ sample: before, value: "control" }, { sample: after, value: "keg" }], tasters: 12, triangle: { correct: 8 },
    preference: { counts: [{ sample: before, count: 3 }, { sample: after, count: 8 }], none: 1 },
    pair: [{ attribute: "pine", counts: [{ sample: before, count: 2 }, { sample: after, count: 10 }] }],
  });
  const [report] = tastingReports(recordOf(batchOf({ aim: { raise: ["pine"], hold: ["bitterness"], primary: "pine" }, tastings: [tasting] }), [rows]));
  if (report === undefined) throw new Error("no tasting came out");
  return report;
}

/** Everything a reader sees of an attribute but the tasters' codes. */
const figuresOf = ({ pairs, ...figures }: AttributeReport): unknown => ({ ...figures, pairs: pairs.map(([, before, after]) => [before, after]) });
const countsOf = ({ triangle, pair, preference }: TastingReport): unknown => ({ triangle, pair, preference });

function expectClose(found: number | undefined, expected: number | undefined): void {
  if (expected === undefined) expect(found).toBeUndefined();
  else expect(found).toBeCloseTo(expected, 9);
}

describe("the names of samples and tasters mean nothing", () => {
  it("samples called anything, in the order of the record, give the same figures", () => {
    fc.assert(fc.property(sheet, (tasters) => {
      const other = { ...PLAIN, before: "zz first", after: "aa second" };
      const [plain, renamed] = [told(PLAIN, { scores: scoreRows(tasters, PLAIN) }), told(other, { scores: scoreRows(tasters, other) })];
      expect(renamed.attributes).toEqual(plain.attributes);
      expect(countsOf(renamed)).toEqual(countsOf(plain));
    }), { numRuns: 40 });
  });

  it("tasters called anything give the same figures and the same words", () => {
    fc.assert(fc.property(sheet, (tasters) => {
      // Backwards through the alphabet, so that sorting by code would show.
      const other = { ...PLAIN, taster: (code: string) => `Z${100 - Number(code.slice(1))}` };
      const [plain, renamed] = [told(PLAIN, { scores: scoreRows(tasters, PLAIN) }), told(other, { scores: scoreRows(tasters, other) })];
      expect(renamed.attributes.map(figuresOf)).toEqual(plain.attributes.map(figuresOf));
      expect(renamed.says).toEqual(plain.says);
    }), { numRuns: 40 });
  });

  it("rows in any order give the same figures", () => {
    fc.assert(fc.property(sheet.chain((tasters) => {
      const rows = scoreRows(tasters, PLAIN);
      return fc.tuple(fc.constant(rows), fc.shuffledSubarray(rows, { minLength: rows.length }));
    }), ([rows, shuffled]) => {
      const [plain, other] = [told(PLAIN, { scores: rows }), told(PLAIN, { scores: shuffled })];
      for (const attribute of plain.attributes) {
        const same = other.attributes.find((one) => one.attribute === attribute.attribute);
        expect(same).toMatchObject({ tasters: attribute.tasters, raised: attribute.raised, lowered: attribute.lowered, primary: attribute.primary });
        for (const key of ["lift", "low", "high", "p", "adjusted", "detectable"] as const) expectClose(same?.[key], attribute[key]);
      }
    }), { numRuns: 40 });
  });

  it("what was poured first and what second, changed over, turns each move round and leaves its p", () => {
    fc.assert(fc.property(sheet, (tasters) => {
      const turned = tasters.map((row) => row.map(([low, high]): [number, number] => [high, low]));
      const [plain, other] = [told(PLAIN, { scores: scoreRows(tasters, PLAIN) }), told(PLAIN, { scores: scoreRows(turned, PLAIN) })];
      for (const [index, attribute] of plain.attributes.entries()) {
        const same = other.attributes[index];
        expectClose(same?.lift, -attribute.lift);
        expectClose(same?.p, attribute.p);
        expectClose(same?.low, attribute.high === undefined ? undefined : -attribute.high);
        expectClose(same?.high, attribute.low === undefined ? undefined : -attribute.low);
      }
    }), { numRuns: 40 });
  });

  it("ranks: tasters called anything and in any order give the same sums and p", () => {
    const orders = [[1, 2], [2, 1], [1.5, 1.5]] as const;
    fc.assert(fc.property(fc.array(fc.constantFrom(...orders), { minLength: 6, maxLength: 12 }), (ranks) => {
      const rows = ranksOf(["before", "after"], ranks);
      const renamed = rows.map((row) => ({ ...row, taster: `Z${100 - Number(row.taster.slice(1))}` })).toReversed();
      const [plain, other] = [told(PLAIN, { ranking: rows }).ranking, told(PLAIN, { ranking: renamed }).ranking];
      expect(other?.sums).toEqual(plain?.sums);
      expectClose(other?.p, plain?.p);
    }), { numRuns: 40 });
  });
});
