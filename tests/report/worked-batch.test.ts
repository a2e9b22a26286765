import { beforeAll, describe, expect, it } from "vitest";
import { logFilesOf, parseLog } from "../../src/records/index.js";
import { buildLogReport, type BatchReport } from "../../src/report/index.js";

/**
 * One batch worked by hand. Each expected value is derived in a comment from a published relation
 * (or a definition) with a desk calculator, never from this program. Sources, once:
 *   extract     ASBC cubic, P = 135.997 S³ − 630.272 S² + 1111.14 S − 616.868 (as quoted in the Brix reference article)
 *   alcohol     Balling: RE = 0.1808 OE + 0.8192 AE (from memory), ABW = (OE − RE)/(2.0665 − 0.010665 OE)
 *   energy      kcal/100 g = 6.9 ABW + 4 (RE − 0.1), Oxford Companion to Beer; 1 kcal = 4.184 kJ
 *   bitterness  Tinseth; stands scaled by Malowicki & Shellhammer 2005, k1 = 7.9e11 e^(−11858/T) a minute
 *   colour      Morey, SRM = 1.4922 MCU^0.6859; Lovibond line SRM = 1.3546 L − 0.76 from memory; EBC = 25/12.7 SRM
 *   water       Kell 1975
 *   gas         ideal gas at 101.325 kPa; oxygen 20.95 % of air; CO2 residue from Hibberd's table as printed by Draper
 *   keg         deLange's curve through the printed chart (from memory)
 */
const RECORD = `---
title: Worked by hand
batch: WH-01
brewed: 2026-03-07
equipment: bench
grist:
  - {malt: Pale malt, amount: 4 kg, extract: 80 %, moisture: 4 %, color: 6 EBC}
  - {malt: Crystal malt, amount: 0.5 kg, extract: 75 %, moisture: 4 %, color: 120 EBC}
boil: {for: 60 min, before: {volume: 26 L, gravity: 1.042}, after: {volume: 22.8 L, gravity: 1.048}}
hops:
  - {hop: Chinook, amount: 20 g, alpha: 10 %, boil: 60 min}
  - {hop: Cascade, amount: 30 g, alpha: 6 %, stand: 20 min, temperature: 90 C}
yeast: {strain: ale, pitched: 2026-03-07 18:00}
fermenter: {volume: 21 L, gravity: 1.048, temperature: 18 C}
fermentation:
  log: fermentation.csv
  pressure: 0 kPa
  readings:
    - {at: 2026-03-14 18:00, gravity: 1.010}
    - {at: 2026-03-17 18:00, gravity: 1.010, diacetyl: clear}
    - {at: 2026-03-21 18:00, gravity: 1.010, diacetyl: clear}
samples: [{at: 2026-03-17 18:00, volume: 0.5 L, kept: control}]
dry_hops:
  - {hop: Cascade, form: pellet, amount: 100 g, oil: 1.2 mL/100g, added: 2026-03-17 18:00, held: loose}
crash: {set: 2 C, from: 2026-03-21 18:00, vent: gas}
dumps: [{at: 2026-03-22 18:00, volume: 0.5 L}]
transfer: {at: 2026-03-23 18:00, volume: 18.5 L, left: 1.0 L, closed: true, sanitised: true}
package:
  date: 2026-03-23
  into: keg
  volume: 18.3 L
  vessel: {volume: 19 L, limit: 400 kPa}
  purge: {by: liquid, left: 0.02 L}
  carbonation: 2.4 vol
  temperature: 4 C
---
`;

const EQUIPMENT = `bench:
  fermenter: {shape: conical, volume: 30 L}
  readings:
    hydrometer: {within: 0.001, calibrated: 20 C}
    thermometer: {within: 0.3 C}
    scale: {within: 1 g}
    volume: {within: 0.25 L}
`;

/** Beer temperature on straight lines between these hours after pitching. */
const CORNERS: readonly (readonly [hour: number, temperatureC: number])[] =
  [[0, 18], [24, 20], [240, 20], [252, 14], [336, 14], [342, 2], [384, 2]];

function temperatureAt(hour: number): number {
  const next = CORNERS.findIndex(([corner]) => corner >= hour);
  const [h1, t1] = CORNERS[Math.max(0, next)] ?? [0, 0];
  const [h0, t0] = CORNERS[Math.max(0, next - 1)] ?? [0, 0];
  return h1 === h0 ? t1 : t0 + ((t1 - t0) * (hour - h0)) / (h1 - h0);
}

function logText(): string {
  const rows = Array.from({ length: 385 }, (_, hour) => {
    const civil = new Date(Date.UTC(2026, 2, 7, 18 + hour)).toISOString().slice(0, 16).replace("T", " ");
    return `${civil},${temperatureAt(hour).toFixed(3)}`;
  });
  return ["time,temperature [C]", ...rows].join("\n");
}

let report: BatchReport;

beforeAll(() => {
  const { log, problems } = parseLog(logFilesOf({
    "batches/worked/index.md": RECORD,
    "batches/worked/fermentation.csv": logText(),
    "shared/equipment.yaml": EQUIPMENT,
    "shared/club.yaml": "name: Bench\nzone: UTC\naltitude: 0 m\n",
  }));
  expect(problems).toEqual([]);
  const [batch] = buildLogReport(log, { asOf: { text: "2026-04-01", date: "2026-04-01" } }).batches;
  if (batch === undefined) throw new Error("the worked batch has no report");
  report = batch;
});

/** Figure, value by hand, what it may differ by from rounding in the hand's steps, and how it was derived. */
const BY_HAND: readonly (readonly [id: string, value: number, within: number, derivation: string])[] = [
  ["original-gravity", 1.048, 1e-9, "as read"],
  ["final-gravity", 1.01, 1e-9, "as read"],
  ["original-extract", 11.912, 0.001, "cubic at 1.048"],
  ["apparent-extract", 2.561, 0.001, "cubic at 1.010"],
  ["real-extract", 4.2515, 0.001, "0.1808 × 11.912 + 0.8192 × 2.561"],
  ["abw", 3.950, 0.001, "(11.912 − 4.2515)/(2.0665 − 0.010665 × 11.912) = 7.6605/1.93946"],
  ["abv", 5.045, 0.002, "3.950 × 1.010/0.7907"],
  ["apparent-attenuation", 78.50, 0.01, "(11.912 − 2.561)/11.912"],
  ["real-attenuation", 65.75, 0.01, "(11.912 − 4.2515)/11.912 over 1 − 0.005161 × 4.2515, as ASBC Beer-6 has it"],
  ["energy", 185.3, 0.2, "(6.9 × 3.950 + 4 × 4.1515) × 1.010 = 44.30 kcal/100 mL, × 4.184"],
  ["potential-extract", 3.432, 1e-6, "4 × 0.96 × 0.80 + 0.5 × 0.96 × 0.75"],
  ["mash-efficiency", 82.5, 0.1, "26 L × 10 × P(1.042) 10.478 × 1.042 × 0.998204 g/L = 2.833 kg of 3.432"],
  ["brewhouse-efficiency", 76.25, 0.05, "21 L × 10 × 11.912 × 1.048 × 0.998204 g/L = 2.617 kg of 3.432"],
  ["boil-off", 3.2, 1e-6, "26 − 22.8 over 1 h"],
  ["bitterness", 27.10, 0.05, "U(60 min, 1.045) = 0.2413 gives 0.2413 × 0.10 × 20 000/22.8 = 21.16; 20 min at 90 °C count as 8.34, giving 5.94"],
  ["color", 16.57, 0.05, "Lovibond 2.811 and 45.56; MCU = (8.818 × 2.811 + 1.1023 × 45.56)/6.0231 = 12.454; 8.416 SRM"],
  ["fermentation-time", 168, 1e-6, "2026-03-07 18:00 to 2026-03-14 18:00"],
  ["fermentation-temperature", 19.9, 0.001, "(24 h at a mean of 19 + 216 h at 20)/240"],
  ["fermentation-peak", 20, 1e-6, "the log's plateau"],
  ["terminal-hours", 72, 1e-6, "1.010 from 14 to 17 March 18:00"],
  ["dry-hop-mass", 100, 1e-9, "as weighed"],
  ["dry-hop-dose", 4.878, 0.001, "100 g over 21 − 0.5 L"],
  ["dry-hop-oil", 5.854, 0.001, "487.8 g/hL × 1.2/100"],
  ["dry-hop-contact", 6, 1e-6, "17 March 18:00 to 23 March 18:00"],
  ["dry-hop-temperature", 10.5, 0.001, "(12 h at 17 + 84 h at 14 + 6 h at 8 + 42 h at 2)/144"],
  ["dry-hop-gravity-drop", 0, 1e-9, "1.010 before and after"],
  ["crash-temperature", 2.006, 0.001, "the hold from 3 °C on: half an hour at a mean of 2.5, then 42 h at 2"],
  ["crash-hours", 42.5, 0.01, "14 °C falls 2 °C an hour from 21 March 18:00: 3 °C after 5.5 h, then to 23 March 18:00"],
  ["crash-lag", 5.5, 0.001, "from 14 °C to 3 °C at 2 °C an hour"],
  ["crash-lowest", 2, 1e-6, "the log's floor"],
  ["freezing-point", -2.34, 0.01, "−(0.42 × 3.950 + 0.04 × 11.912 + 0.2), a textbook rule from memory"],
  ["crash-rate", 2, 0.001, "12 °C over 6 h"],
  ["settling-cell", 3.17, 0.02, "70 × 9.80665 × (8e-6)²/(18 × 0.002770) m/s; viscosity 1.55 e^(2604 (1/275.156 − 1/293.15)) = 2.770 mPa s"],
  ["settling-clump", 212, 1, "30 × 9.80665 × (1e-4)²/(18 × 0.002770) m/s"],
  ["crash-drawn", 0.411, 0.002, "9.5 L × (1 − 275.15/287.15) = 0.397, and 20.5 L shrinking 0.07 % by water's density = 0.014"],
  ["crash-drawn-most", 10.7, 0.1, "solubility 10 e^(−10.73797 + 2617.25/T) g/L/bar: 20.5 L take up 20.6 g more at 2 °C, the space 0.76 g more; 0.473 mol at 2 °C"],
  ["transfer-efficiency", 88.10, 0.01, "18.5/21"],
  ["loss-samples", 0.5, 1e-9, "as recorded"],
  ["loss-dumps", 0.5, 1e-9, "as recorded"],
  ["loss-left", 1, 1e-9, "as recorded"],
  ["loss-unaccounted", 0.7, 1e-6, "21 − 0.5 − 0.5 − 1.0 − 18.3"],
  ["loss-total", 2.7, 1e-6, "21 − 18.3"],
  ["package-yield", 87.14, 0.01, "18.3/21"],
  ["residual-co2", 0.88, 0.025, "Hibberd's table at 20 °C, the warmest hour after 14 March"],
  ["keg-pressure", 74.1, 0.5, "(2.4 + 0.003342)/(0.01821 + 0.090115 e^(−7.2/43.11)) − 14.695 = 10.75 psi"],
  ["package-oxygen", 0.322, 0.002, "0.2095 × 0.02/19 of 19 L at 4 °C: 31.998 × 1000 × 2.209e-4 × 0.8354 mol over 18.3 L"],
];

describe("one whole batch worked by hand", () => {
  it.each(BY_HAND)("%s is %d (± %d): %s", (id, value, within) => {
    const figure = report.figures[id];
    expect(figure, report.missing[id]).toBeDefined();
    expect(Math.abs((figure?.value ?? Number.NaN) - value)).toBeLessThanOrEqual(within);
  });

  it("covers every figure that this batch can have, and says why the rest are missing", () => {
    expect(Object.keys(report.figures).sort()).toEqual(BY_HAND.map(([id]) => id).sort());
    expect(Object.keys(report.missing).sort()).toEqual(["dry-hop-ph-rise", "latest-gravity", "priming-sugar"]);
  });

  it("gives uncertainties that a hand would: gravity, dose, losses", () => {
    // 2 × 0.001/√3; dose: 4.878 × 2 √((1/100)² + (0.25² + 0.05²)/20.5²)/√3, the half-litre sample read in a jug to a tenth; loss of two volumes: 2 √(2 × 0.25²/3)
    expect(report.figures["original-gravity"]?.plusMinus).toBeCloseTo(0.001155, 6);
    expect(report.figures["dry-hop-dose"]?.plusMinus).toBeCloseTo(0.0899, 3);
    expect(report.figures["loss-total"]?.plusMinus).toBeCloseTo(0.4082, 4);
    // The probe's one error stays whole in a mean and goes out of a difference: 2 × 0.3/√3.
    expect(report.figures["fermentation-temperature"]?.plusMinus).toBeCloseTo(0.3464, 4);
    expect(report.figures["crash-rate"]?.plusMinus).toBeUndefined();
  });

  it("closes the ledger: its litres sum to what went in", () => {
    expect(report.ledger.reduce((sum, entry) => sum + entry.litres, 0)).toBeCloseTo(21, 9);
  });

  it("passes the checks this batch was made to pass", () => {
    const verdicts = Object.fromEntries(report.checks.map((check) => [check.id, check.verdict]));
    // Oxygen is 0.32 mg/L, over the 0.2 the trade quotes: to watch.
    expect(verdicts).toEqual({
      "terminal-before-dry-hop": "pass", "vdk-before-crash": "pass", "contact-time": "pass", "contact-temperature": "pass",
      "hop-creep": "pass", "crash-hold": "pass", "crash-vessel": "pass", "crash-freezing": "pass", "crash-air": "pass", "dumped-before-transfer": "pass",
      sanitised: "pass", "ledger-closes": "pass", "package-purge": "watch", "package-pressure": "pass",
    });
  });
});
