import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromOwnUnit, parseDifference, parseQuantity, QUANTITY_KINDS, toOwnUnit, UNITS, unitNamed, unitsOf, type QuantityKind } from "../../src/units/index.js";

const value = (text: string, kind: QuantityKind): number => {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(parsed.fault.reason);
  return parsed.quantity.value;
};
const fault = (text: string, kind: QuantityKind): unknown => {
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? "none" : parsed.fault;
};

describe("a unit is worth what is published", () => {
  // NIST Special Publication 811 (2008), appendix B.8, unless another source stands beside the row.
  test.each([
    ["mass", "1 lb", 453.59237], ["mass", "1 oz", 28.349523125], ["mass", "1 kg", 1000], ["mass", "1 mg", 0.001],
    ["volume", "1 gal", 3.785411784], ["volume", "1 qt", 0.946352946], ["volume", "1 fl oz", 0.0295735295625], ["volume", "1 mL", 0.001],
    ["volume", "1 hL", 100],
    ["volume", "1 imp gal", 4.54609], // UK Weights and Measures Act 1985, exact
    ["volume", "1 bbl", 117.347765304], // 31 US gallons: 27 CFR 25.11
    ["temperature", "32 F", 0], ["temperature", "212 F", 100], ["temperature", "50 F", 10], ["temperature", "-40 F", -40], ["temperature", "273.15 K", 0],
    ["time", "1 d", 24], ["time", "90 min", 1.5], ["time", "36 s", 0.01], ["time", "1 wk", 168],
    ["pressure", "1 bar", 100], ["pressure", "1 psi", 6.894757], ["pressure", "14.5 psi", 99.97398],
    ["length", "1 ft", 0.3048],
    ["dose", "1 oz/gal", 7.489152], ["dose", "1 lb/bbl", 3.865369], // from the factors above: 28.349523/3.785412; 453.59237/117.347765
    ["dose", "100 g/hL", 1],
    ["rate", "1 gal/h", 3.785411784], ["concentration", "1 ppm", 1], ["share", "80.5 %", 80.5], ["oil", "1.3 mL/100g", 1.3],
    ["color", "10 SRM", 19.685039], // EBC = 25 A430, SRM = 12.7 A430 (ASBC and EBC colour methods): ratio 1.968504
    ["color", "60 Lovibond", 158.496063], // SRM = 1.3546 L − 0.76 (from memory): 80.516 SRM, times 25/12.7
    ["carbonation", "4.9425 g/L", 2.5], // 1.977 g/L of gas at 0 °C and 1 atm (from memory)
  ] as const)("%s: %s", (kind, text, expected) => {
    expect(value(text, kind)).toBeCloseTo(expected, 5);
  });

  test("gravity stays in the unit it was written in", () => {
    expect(parseQuantity("12.1 P", "gravity")).toMatchObject({ ok: true, quantity: { value: 12.1, unit: "P" } });
    expect(parseQuantity("12.6 Bx", "gravity")).toMatchObject({ ok: true, quantity: { value: 12.6, unit: "Bx" } });
    expect(parseQuantity("1.048", "gravity")).toMatchObject({ ok: true, quantity: { value: 1.048, unit: "SG" } });
  });
});

describe("a quantity", () => {
  test("may be read at a temperature and carry its own limit", () => {
    expect(parseQuantity("19.0 L at 2 C ± 0.1 L", "volume")).toEqual({ ok: true, quantity: { kind: "volume", value: 19, unit: "L", text: "19.0 L at 2 C ± 0.1 L", limit: 0.1, atC: 2 } });
    expect(parseQuantity("5 gal at 35.6 F +/- 1 qt", "volume")).toMatchObject({ ok: true, quantity: { atC: expect.closeTo(2, 9) as number, limit: 0.946352946 } });
    expect(parseQuantity("1.046 at 30 C ± 0.001", "gravity")).toMatchObject({ ok: true, quantity: { value: 1.046, atC: 30, limit: 0.001 } });
  });

  test("of temperature has a limit that is a width: its zero plays no part", () => {
    expect(parseQuantity("68 F ± 0.9 F", "temperature")).toMatchObject({ ok: true, quantity: { value: expect.closeTo(20, 9) as number, limit: expect.closeTo(0.5, 9) as number } });
  });

  test.each([
    ["70", "mass", { reason: "unit-missing", number: "70" }],
    ["3 L", "mass", { reason: "unit-wrong-kind", unit: "L", kind: "volume" }],
    ["3 g/L", "mass", { reason: "unit-wrong-kind", unit: "g/L", kind: "dose" }],
    ["70 grams", "mass", { reason: "unit-unknown", unit: "grams" }],
    ["1,5 kg", "mass", { reason: "decimal-comma", repaired: "1.5 kg" }],
    ["1048", "gravity", { reason: "gravity-without-point", repaired: "1.048" }],
    ["1049.5", "gravity", { reason: "gravity-without-point", repaired: "1.0495" }],
    ["1.48", "gravity", { reason: "out-of-range", low: 0.98, high: 1.2, unit: "SG" }],
    ["60 P", "gravity", { reason: "out-of-range", low: -5, high: 45, unit: "P" }],
    ["-300 C", "temperature", { reason: "out-of-range", low: -273.15, high: 1000, unit: "C" }],
    ["-1 g", "mass", { reason: "negative" }],
    ["5 g at 20 C", "mass", { reason: "temperature-not-allowed" }],
    ["19 L at 2", "volume", { reason: "unit-missing", number: "2" }],
    ["19 L ± 0.1 C", "volume", { reason: "unit-wrong-kind", unit: "C", kind: "temperature" }],
    ["1.048 ± 0.1 P", "gravity", { reason: "unit-wrong-kind", unit: "P", kind: "gravity" }],
    ["19 L ± 1 L ± 2 L", "volume", { reason: "not-a-quantity" }],
    ["19 L at 2 C at 3 C", "volume", { reason: "not-a-quantity" }],
    ["9".repeat(400) + " g", "mass", { reason: "not-a-quantity" }],
    ["", "mass", { reason: "not-a-quantity" }],
    ["some", "mass", { reason: "not-a-quantity" }],
    ["1 constructor", "mass", { reason: "unit-unknown", unit: "constructor" }],
  ] as const)("%s as a %s is refused", (text, kind, expected) => {
    expect(fault(text, kind)).toEqual(expected);
  });

  test("in degrees Lovibond below zero on the own scale is out of the relation's range, not negative", () => {
    expect(fault("0.3 Lovibond", "color")).toMatchObject({ reason: "out-of-range", unit: "Lovibond" });
    expect(fault("-3 EBC", "color")).toEqual({ reason: "negative" });
  });

  test("of any text either reads or says why, and never as no number", () => {
    fc.assert(fc.property(fc.string(), fc.constantFrom(...QUANTITY_KINDS), (text, kind) => {
      const parsed = parseQuantity(text, kind);
      if (parsed.ok) expect(Number.isFinite(parsed.quantity.value)).toBe(true);
      else expect(parsed.fault.reason).not.toBe("");
    }), { seed: 1 });
  });
});

describe("a difference", () => {
  test("is a width in the own unit", () => {
    expect(parseDifference("0.9 F", "temperature")).toMatchObject({ ok: true, quantity: { value: expect.closeTo(0.5, 12) as number } });
    expect(parseDifference("0.001", "gravity")).toMatchObject({ ok: true, quantity: { value: 0.001, unit: "SG" } });
    expect(parseDifference("0.2 Bx", "gravity")).toMatchObject({ ok: true, quantity: { value: 0.2, unit: "Bx" } });
  });

  test.each([["0.3", "unit-missing"], ["-0.3 C", "negative"], ["0,3 C", "decimal-comma"], ["0.3 L", "unit-wrong-kind"]])("%s of temperature is refused", (text, reason) => {
    const parsed = parseDifference(text, "temperature");
    expect(parsed.ok ? "" : parsed.fault.reason).toBe(reason);
  });
});

describe("the table of units", () => {
  test("turns a value there and back", () => {
    fc.assert(fc.property(fc.constantFrom(...Object.keys(UNITS)), fc.double({ min: 0.01, max: 1e4, noNaN: true }), (unit, number) => {
      const back = fromOwnUnit(toOwnUnit(number, unit), unit);
      expect(Math.abs(back - number)).toBeLessThan(1e-9 * Math.max(1, number) * 10);
    }), { seed: 2 });
  });

  test("lists for each kind the units the record format allows, all of that kind", () => {
    for (const kind of QUANTITY_KINDS) expect(unitsOf(kind).every((name) => unitNamed(name, kind)?.kind === kind)).toBe(true);
    expect(unitsOf("carbonation")).toEqual(["vol", "g/L"]);
    expect(unitsOf("dose")).toEqual(["g/L", "g/hL", "oz/gal", "lb/bbl"]);
  });
});
