import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { extractMass, gravityFromPlato, platoFromGravity } from "../../src/science/index.js";
import { fromOwnUnit, toOwnUnit } from "../../src/units/index.js";
import { weighedInAir } from "./rows/reading.js";

type Column =
  | "plato_or_brix" | "sg_20_20_nbs_polynomial" | "sg_20_20_asbc_cubic_inverse" | "sg_printed_usda_135A50"
  | "lb_per_usgal_in_air_printed_nbs_c440" | "extract_g_per_L_true";

const table: readonly Record<Column, string>[] = parse(readFileSync(new URL("fixtures/plato_sg.csv", import.meta.url)), { columns: true });
const waterKgPerL = 0.998204; // at 20 °C, Kell 1975

/** Rows that have a number in a column, as pairs of extract and that number. */
function pairs(column: Column): (readonly [number, number])[] {
  return table.filter((row) => row[column] !== "").map((row) => [Number(row.plato_or_brix), Number(row[column])] as const);
}

describe("the table of extract and gravity", () => {
  it.each(pairs("sg_printed_usda_135A50"))("printed by the USDA (135-A-50): %f P is %f", (extractP, gravitySg) => {
    expect(Math.abs(gravityFromPlato(extractP) - gravitySg)).toBeLessThanOrEqual(0.00003);
  });

  it.each(pairs("lb_per_usgal_in_air_printed_nbs_c440"))("printed in NBS Circular C440: %f P weighs %f lb a US gallon in air", (extractP, pounds) => {
    const kgPerL = gravityFromPlato(extractP) * waterKgPerL;
    const found = fromOwnUnit(1000 * weighedInAir(kgPerL * toOwnUnit(1, "gal"), kgPerL), "lb");
    expect(Math.abs(found - pounds)).toBeLessThanOrEqual(0.0015);
  });

  it("follows the ASBC cubic to 20 P and the NBS cubic beyond, to the digits of the table", () => {
    for (const [extractP, gravitySg] of pairs("sg_20_20_asbc_cubic_inverse").filter(([extractP]) => extractP <= 20)) {
      expect(Math.abs(gravityFromPlato(extractP) - gravitySg), `${extractP} P`).toBeLessThanOrEqual(0.00001);
    }
    for (const [extractP, gravitySg] of pairs("sg_20_20_nbs_polynomial").filter(([extractP]) => extractP > 20)) {
      expect(Math.abs(gravityFromPlato(extractP) - gravitySg), `${extractP} P`).toBeLessThanOrEqual(0.00001);
    }
  });

  it("never strays from the NBS cubic by more than 0.002 P, which it does at 0 P", () => {
    for (const [extractP, gravitySg] of pairs("sg_20_20_nbs_polynomial")) {
      // The table's last digit, half of 0.00001, is worth 0.0013 P.
      expect(Math.abs(platoFromGravity(gravitySg) - extractP), `${extractP} P`).toBeLessThanOrEqual(0.002 + 0.0013);
    }
  });

  it("holds the extract the table says, by mass in a litre", () => {
    for (const [extractP, gramsPerL] of pairs("extract_g_per_L_true").filter(([extractP]) => extractP >= 0.1)) {
      const found = 1000 * extractMass(gravityFromPlato(extractP), 1);
      expect(Math.abs(found - gramsPerL), `${extractP} P`).toBeLessThanOrEqual(0.01);
    }
  });
});
