const PRINTED: Readonly<Record<string, string>> = {
  SG: "", C: "°C", F: "°F", "C/h": "°C/h", "F/h": "°F/h", P: "°P", Bx: "°Bx", "kJ/100mL": "kJ/100 mL",
  "mL/100g": "mL/100 g", um: "µm", "kg/m3": "kg/m³", "mPa.s": "mPa·s", "count": "",
};

/** Decimals where no uncertainty says how many: what the trade writes. */
const DECIMALS: Readonly<Record<string, number>> = {
  SG: 3, P: 1, "%": 1, IBU: 0, EBC: 0, SRM: 0, L: 1, gal: 2, mL: 0, "fl oz": 1, g: 0, oz: 2, kg: 2, lb: 2, C: 1, F: 0, h: 0, d: 1,
  kPa: 0, psi: 1, bar: 2, vol: 2, "g/L": 1, "oz/gal": 2, "L/kg": 1, "gal/lb": 2, "mL/hL": 1, "mg/L": 2, "C/h": 1, "F/h": 1, "L/h": 1, "gal/h": 2,
  "kJ/100mL": 0, "kcal/12 fl oz": 0, count: 0, pH: 2, m: 0, ft: 0, cm: 0, mm: 0, in: 1, "mm/h": 0, um: 0, "kg/m3": 0, "in/h": 1,
};

/** How a unit is written on a page: `C` → `°C`. */
export function printedUnit(unit: string): string {
  return PRINTED[unit] ?? unit;
}

export function usualDecimals(unit: string): number {
  return DECIMALS[unit] ?? 2;
}

/** A number with a true minus sign, and none before a nought. */
export function printedNumber(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const isZero = Number(text) === 0;
  return value < 0 && !isZero ? `−${text}` : text;
}
