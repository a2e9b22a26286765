import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIGURE_TABLE, type BatchReport } from "../../src/report/index.js";
import { at, batchOf, BENCH, everyHours, logOf, valueAt, type Corners, type Fields } from "./bench-batch.js";
import { faultsIn } from "./faults-in.js";
import { inMetric, inUs, USUAL, wholeEquipment, wholeFields, wholeTemperature, type WholeBatch } from "./whole-batch.js";

/** A record that closes: what is packaged, left, dumped and drawn is less than what went in. */
const anyBatch: fc.Arbitrary<WholeBatch> = fc.record({
  fermenterL: fc.double({ min: 20, max: 26, noNaN: true }), sampleL: fc.double({ min: 0.1, max: 0.6, noNaN: true }), dumpL: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
  leftL: fc.double({ min: 0.2, max: 1, noNaN: true }), packagedL: fc.double({ min: 15, max: 17.5, noNaN: true }), hopsG: fc.double({ min: 5, max: 250, noNaN: true }),
  paleKg: fc.double({ min: 3, max: 7, noNaN: true }), coldC: fc.double({ min: 0, max: 5, noNaN: true }), servedC: fc.double({ min: 1, max: 12, noNaN: true }),
  carbonationVol: fc.double({ min: 1.8, max: 3, noNaN: true }),
});

function metric(batch: WholeBatch, more: Fields = {}): BatchReport {
  return batchOf({ ...wholeFields(batch, inMetric), ...more }, { equipment: wholeEquipment("metric"), temperature: wholeTemperature(batch.coldC) });
}

function us(batch: WholeBatch): BatchReport {
  const corners = wholeTemperature(batch.coldC);
  const log = logOf(corners, everyHours(corners, 1), "temperature [F]", (celsius) => (Number(celsius.toFixed(4)) * 1.8 + 32).toFixed(9));
  const club = "name: Bench\nzone: UTC\naltitude: 0 ft\nunits: us\n";
  return batchOf(wholeFields(batch, inUs), { equipment: wholeEquipment("us"), club, files: { "fermentation.csv": log } });
}

/** Every number of a figure, by name. */
function numbersOf(batch: BatchReport): Record<string, number> {
  const figures = Object.entries(batch.figures).flatMap(([id, { value, plusMinus }]) => [[id, value], ...(plusMinus === undefined ? [] : [[`${id} ±`, plusMinus]])] as [string, number][]);
  const planned = Object.entries(batch.planned).map(([id, { value }]) => [`planned ${id}`, value] as [string, number]);
  const ledger = batch.ledger.map(({ to, litres }, index) => [`ledger ${String(index)} ${to}`, litres] as [string, number]);
  return Object.fromEntries([...figures, ...planned, ...ledger]);
}

/** Names of the numbers that differ by more than a share of themselves. */
function differing(one: Record<string, number>, other: Record<string, number>, share = 1e-6): string[] {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...names].flatMap((name) => {
    const [a, b] = [one[name], other[name]];
    if (a === undefined || b === undefined) return [`${name} in one only`];
    return Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b)) + 1e-9 ? [] : [`${name}: ${String(a)} and ${String(b)}`];
  });
}

describe("a record in US units", () => {
  it("gives the figures, limits, plan and ledger of the same record in metric units", () => {
    fc.assert(fc.property(anyBatch, (batch) => {
      const [inLitres, inGallons] = [metric(batch), us(batch)];
      expect(Object.keys(inLitres.figures).length).toBeGreaterThan(40);
      expect(differing(numbersOf(inLitres), numbersOf(inGallons))).toEqual([]);
      expect(inGallons.checks.map(({ id, verdict }) => `${id} ${verdict}`)).toEqual(inLitres.checks.map(({ id, verdict }) => `${id} ${verdict}`));
    }), { numRuns: 8, seed: 20260307 });
  });
});

describe("one course of temperature", () => {
  const FROM_LOG = [
    "fermentation-temperature", "fermentation-peak", "dry-hop-temperature", "crash-temperature", "crash-hours", "crash-lag", "crash-lowest", "crash-rate", "crash-drawn", "residual-co2",
  ];

  /** Whole hours at which the course bends, the events in minutes between them. */
  const anyCourse = fc.record({
    temperatures: fc.array(fc.double({ min: 15, max: 24, noNaN: true }), { minLength: 4, maxLength: 4 }),
    coldC: fc.double({ min: 0, max: 4, noNaN: true }),
    coolingH: fc.integer({ min: 3, max: 12 }),
    hopsMinute: fc.integer({ min: 30 * 60, max: 45 * 60 }),
    crashMinute: fc.integer({ min: 52 * 60, max: 56 * 60 }),
    movedMinute: fc.integer({ min: 76 * 60, max: 85 * 60 }),
    steps: fc.array(fc.integer({ min: 7, max: 115 }), { minLength: 20, maxLength: 20 }),
  });
  type Course = typeof anyCourse extends fc.Arbitrary<infer Value> ? Value : never;

  function cornersOf({ temperatures: [a = 18, b = 18, c = 18, d = 18], coldC, coolingH }: Course): Corners {
    return [[0, a], [20, b], [46, c], [57, d], [57 + coolingH, coldC], [86, coldC]];
  }

  /** Uneven steps under two hours that stop at each corner. */
  function uneven(corners: Corners, steps: readonly number[]): number[] {
    const hours = new Set(corners.map(([hour]) => hour));
    let minute = 0;
    for (let index = 0; minute < 86 * 60; index += 1) {
      hours.add(minute / 60);
      minute += steps[index % steps.length] ?? 60;
    }
    return [...hours].sort((a, b) => a - b);
  }

  function figuresOf(course: Course, hours: readonly number[]): Record<string, number> {
    const batch = batchOf({
      fermenter: "{volume: 20 L, gravity: 1.048}", dry_hops: `[{hop: Cascade, form: pellet, amount: 100 g, added: ${at(course.hopsMinute / 60)}}]`,
      fermentation: `{log: course.csv, readings: [{at: ${at(20)}, gravity: 1.010}, {at: ${at(29)}, gravity: 1.010}]}`, samples: "[]",
      crash: `{set: ${course.coldC.toFixed(4)} C, from: ${at(course.crashMinute / 60)}, vent: gas}`, transfer: `{at: ${at(course.movedMinute / 60)}}`,
    }, { files: { "course.csv": logOf(cornersOf(course), hours, "temperature [C]", (value) => value.toFixed(12)) } });
    const numbers = numbersOf(batch);
    return Object.fromEntries(FROM_LOG.flatMap((id) => [id, `${id} ±`]).flatMap((name) => (numbers[name] === undefined ? [] : [[name, numbers[name]]])));
  }

  it("gives the same averages, extremes, hold, lag and rate logged each minute, half-hour, hour or unevenly", () => {
    fc.assert(fc.property(anyCourse, (course) => {
      const corners = cornersOf(course);
      const hourly = figuresOf(course, everyHours(corners, 1));
      expect(Object.keys(hourly)).toEqual(expect.arrayContaining(FROM_LOG));
      for (const hours of [everyHours(corners, 1 / 60), everyHours(corners, 0.5), uneven(corners, course.steps)]) {
        expect(differing(hourly, figuresOf(course, hours))).toEqual([]);
      }
    }), { numRuns: 8, seed: 20260307 });
  });

  it("keeps to the course between its corners", () => {
    // The bench's own straight lines, on which the property above stands: 18 to 20 in 24 h is 19 half-way.
    expect(valueAt([[0, 18], [24, 20], [48, 20]], 12)).toBe(19);
    expect(valueAt([[0, 18], [24, 20], [48, 20]], 48)).toBe(20);
  });
});

describe("the ledger", () => {
  it("sums to what went into the fermenter, whatever was read", () => {
    fc.assert(fc.property(anyBatch, (batch) => {
      const { ledger, ledgerDetail } = metric(batch);
      expect(ledger.map(({ to }) => to)).toEqual(["samples", "dumps", "left", "package", "package", "unaccounted"]);
      expect(ledger.reduce((sum, { litres }) => sum + litres, 0)).toBeCloseTo(batch.fermenterL, 9);
      expect(ledgerDetail?.into).toBeCloseTo(batch.fermenterL, 9);
    }), { numRuns: 12, seed: 20260309 });
  });
});

describe("keg pressure", () => {
  const pressure = (carbonation: number, temperature: number): number => {
    const { figures, missing } = batchOf({ package: `{into: keg, carbonation: ${carbonation.toFixed(6)} vol, temperature: ${temperature.toFixed(6)} C}` });
    if (figures["keg-pressure"] === undefined) throw new Error(missing["keg-pressure"]);
    return figures["keg-pressure"].value;
  };
  const vol = fc.double({ min: 1.2, max: 4, noNaN: true });
  const celsius = fc.double({ min: -1, max: 20, noNaN: true });
  const more = fc.double({ min: 0.01, max: 2, noNaN: true });

  it("rises with the carbonation and with the temperature: Henry's law, and gas that dissolves less in warm beer", () => {
    fc.assert(fc.property(vol, celsius, more, (carbonation, temperature, step) => {
      const here = pressure(carbonation, temperature);
      expect(pressure(carbonation + step, temperature)).toBeGreaterThan(here);
      expect(pressure(carbonation, temperature + step)).toBeGreaterThan(here);
    }), { numRuns: 25, seed: 20260310 });
  });
});

describe("a record with parts left out", () => {
  const whole = wholeFields(USUAL, inMetric);
  /** What a reader is told is missing when a part of the record is. */
  const NAMED: Readonly<Record<string, RegExp>> = {
    grist: /grist isn't recorded/u, boil: /boil\./u, hops: /hops \(kettle\)/u, fermenter: /fermenter\.volume/u, fermentation: /fermentation\.(?:log|readings)/u,
    samples: /samples isn't recorded/u, dry_hops: /dry_hops isn't recorded/u, crash: /crash\.(?:from|set)/u, dumps: /dumps isn't recorded/u,
    transfer: /transfer(?:\.at|\.left)? isn't recorded/u, package: /package isn't recorded/u,
  };

  it("has each figure or the reason why not, names every part left out, and holds no NaN", () => {
    fc.assert(fc.property(fc.subarray(Object.keys(whole)), (dropped) => {
      const batch = batchOf({ ...whole, ...Object.fromEntries(dropped.map((key) => [key, undefined])) }, { temperature: wholeTemperature(2) });
      expect(faultsIn(batch)).toEqual([]);
      expect([...Object.keys(batch.figures), ...Object.keys(batch.missing)].sort()).toEqual(FIGURE_TABLE.map(({ id }) => id).sort());
      const said = Object.values(batch.missing).join("\n");
      for (const key of dropped) if (NAMED[key] !== undefined) expect(said).toMatch(NAMED[key]);
      for (const { verdict, says } of batch.checks) if (verdict === "unknown" && says.startsWith("Can't tell")) expect(says.length).toBeGreaterThan("Can't tell: .".length);
    }), { numRuns: 40, seed: 20260308 });
  });

  it("has all but the figures that can't stand beside others when nothing is left out", () => {
    const { missing } = batchOf(whole, { temperature: wholeTemperature(2), equipment: BENCH });
    expect(Object.keys(missing)).toEqual(["latest-gravity"]);
  });
});
