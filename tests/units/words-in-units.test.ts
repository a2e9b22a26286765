import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wordsInUnits } from "../../src/units/index.js";

// Expected numbers by hand from the exact definitions: 1 oz = 28.349523125 g, 1 gal = 3.785411784 L,
// 1 psi = 6.894757 kPa, °F = 1.8 °C + 32, SRM = EBC × 12.7/25 (NIST SP 811; ASBC Beer-10).

describe("sentences for a club that puts US units first", () => {
  it.each([
    ["Dry-hopped at 5.5 g/L for 3.0 d at 12.5 °C.", "Dry-hopped at 0.73 oz/gal (5.5 g/L) for 3.0 d at 54.5 °F (12.5 °C)."],
    ["Outside the usual 4 °C to 22 °C for 3 h", "Outside the usual 39 to 72 °F (4 °C to 22 °C) for 3 h"],
    ["at 0 to 6 °C", "at 32 to 43 °F (0 to 6 °C)"],
    ["110 g Cascade", "3.88 oz (110 g) Cascade"],
    ["3 kg", "6.61 lb (3 kg)"],
    ["0.4 ± 0.3 L unaccounted", "0.11 ± 0.08 gal (0.4 ± 0.3 L) unaccounted"],
    ["Up to 83 kPa in it", "Up to 12.0 psi (83 kPa) in it"],
    ["near −2.3 °C", "near 27.9 °F (−2.3 °C)"],
    ["12 EBC, below 14 EBC", "6 SRM (12 EBC), below 7 SRM (14 EBC)"],
    ["10 L for each kilogram at 4 L/kg", "2.64 gal (10 L) for each kilogram at 0.48 gal/lb (4 L/kg)"],
  ])("%s", (metric, us) => {
    expect(wordsInUnits(metric, "us")).toBe(us);
  });

  it("tells a difference of temperature from a point on its scale", () => {
    expect(wordsInUnits("Within 1 °C of the 3 °C set", "us")).toBe("Within 2 °F (1 °C) of the 37 °F (3 °C) set");
    expect(wordsInUnits("0.5 °C above the plan", "us")).toBe("0.9 °F (0.5 °C) above the plan");
    expect(wordsInUnits("thermometer ± 0.5 °C", "us")).toBe("thermometer ± 0.9 °F (0.5 °C)");
    expect(wordsInUnits("18.0 ± 0.6 °C", "us")).toBe("64.4 ± 1.1 °F (18.0 ± 0.6 °C)");
  });

  it("gives what a record wrote in US units its metric in brackets", () => {
    expect(wordsInUnits("11 lb", "us")).toBe("11 lb (4.99 kg)");
    expect(wordsInUnits("stand at 170 °F", "us")).toBe("stand at 170 °F (76.7 °C)");
    expect(wordsInUnits("limited to 130 psi", "us")).toBe("limited to 130 psi (896 kPa)");
  });

  it.each(["TP-03 L", "1.2 mL/hL", "1.2 mL/100 g", "0.2 mg/L", "2.4 vol", "60 min boil", "20/20", "2026-10-03 18:30", "5 Golding", "48 h", "3 glasses"])("leaves %s alone", (text) => {
    expect(wordsInUnits(text, "us")).toBe(text);
  });

  it("leaves every sentence of a metric club alone, and one that is converted already", () => {
    const words = fc.array(fc.oneof(fc.constantFrom("held at", "within", "to", "±", "(", ")", ",", "°C", "L", "kPa", "g/L", "oz", "psi", "°F"), fc.double({ min: -20, max: 500, noNaN: true }).map((number) => number.toFixed(1)))).map((parts) => parts.join(" "));
    fc.assert(fc.property(words, (text) => {
      expect(wordsInUnits(text, "metric")).toBe(text);
    }));
    for (const text of ["110 g Cascade at 12.5 °C", "4 to 22 °C", "0.4 ± 0.3 L", "11 lb", "−2.3 °C"]) {
      expect(wordsInUnits(wordsInUnits(text, "us"), "us")).toBe(wordsInUnits(text, "us"));
    }
  });

  it("has no room for brackets in a label", () => {
    expect(wordsInUnits("crash to 2 °C", "us", true)).toBe("crash to 36 °F");
    expect(wordsInUnits("4 oz Cascade", "us", true)).toBe("4 oz Cascade");
  });
});
