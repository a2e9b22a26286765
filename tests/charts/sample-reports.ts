import type {
  AttributeReport, CountReport, DryHopReport, EventReport, GroupReport, LedgerReport, PooledReport, RelationReport, SeasonSeries, TimelineReport, VersionFigure,
} from "../../src/report/index.js";

/**
 * Invented reports for the tests of the charts. Their numbers hang together the way a batch's do, but
 * no reading stands behind them.
 */

/** Repeatable noise between −1 and 1: Park and Miller's generator (Comm. ACM 31:1192, 1988). */
export function noise(seed: number): () => number {
  let state = seed;
  return () => {
    state = state * 48271 % 2147483647;
    return state / 2147483647 * 2 - 1;
  };
}

type Run = readonly (readonly [number, number])[];

function temperatureAt(hour: number): number {
  if (hour < 60) return 18.2 + hour / 60 * 1.6;
  if (hour < 216) return 20;
  if (hour < 238) return 20 - (hour - 216) / 22 * 7;
  if (hour < 339) return 13;
  return Math.max(2, 13 - (hour - 339) * 0.7);
}

function gravityAt(hour: number): number {
  const fermented = 1 / (1 + Math.exp(-(hour - 40) / 13));
  return 1.0505 - 0.0395 * fermented - (hour > 243 ? 0.0006 * Math.min(1, (hour - 243) / 60) : 0);
}

export function run(fromHour: number, toHour: number, stepHours: number, value: (hour: number) => number): Run {
  return Array.from({ length: Math.floor((toHour - fromHour) / stepHours) + 1 }, (_, index) => {
    const hour = fromHour + index * stepHours;
    return [hour, value(hour)] as const;
  });
}

export const EVENTS: readonly EventReport[] = [
  { kind: "pitch", at: "2026-01-24 16:10", hour: 0, dateOnly: false, label: "11 g English ale" },
  { kind: "sample", at: "2026-01-31 10:15", hour: 162, dateOnly: false, label: "0.12 L sample" },
  { kind: "sample", at: "2026-02-02 19:40", hour: 219.5, dateOnly: false, label: "0.12 L sample" },
  { kind: "dump", at: "2026-02-03 18:30", hour: 242.3, dateOnly: false, label: "0.5 L dumped" },
  { kind: "sample", at: "2026-02-03 18:50", hour: 242.7, dateOnly: false, label: "0.5 L kept as control" },
  { kind: "dry-hop", at: "2026-02-03 19:10", hour: 243, dateOnly: false, label: "92 g Cascade" },
  { kind: "crash", at: "2026-02-07 19:00", hour: 338.8, dateOnly: false, label: "crash to 2 °C" },
  { kind: "dump", at: "2026-02-09 18:30", hour: 386.3, dateOnly: false, label: "0.4 L dumped" },
  { kind: "transfer", at: "2026-02-09 19:10", hour: 387, dateOnly: false, label: "18.9 L transferred" },
  { kind: "package", at: "2026-02-09", hour: 380, dateOnly: true, label: "keg" },
  { kind: "tasting", at: "2026-02-22", hour: 692, dateOnly: true, label: "tasting" },
  { kind: "reading", at: "2026-01-28 08:00", hour: 88, dateOnly: false, label: "1.0125" },
];

export function timeline(): TimelineReport {
  const temperatureNoise = noise(11);
  const gravityNoise = noise(23);
  const temperature = (hour: number): number => Math.round((temperatureAt(hour) + temperatureNoise() * 0.25) * 10) / 10;
  const gravity = (hour: number): number => Math.round((gravityAt(hour) + gravityNoise() * 0.0004) * 1e4) / 1e4;
  return {
    start: "2026-01-24 16:10",
    events: EVENTS,
    phases: [
      { kind: "fermentation", fromHour: 0, toHour: 110 }, { kind: "dry hop", fromHour: 243, toHour: 387 }, { kind: "crash", fromHour: 338.8, toHour: 387 },
    ],
    temperature: { unit: "C", source: "log", runs: [run(0, 120, 1, temperature), run(148, 387, 1, temperature)] },
    gravity: { unit: "SG", source: "log", runs: [run(0, 120, 1, gravity), run(148, 387, 1, gravity)] },
    gravityReadings: { unit: "SG", source: "hand", runs: [[[88, 1.0125], [162, 1.0105], [219.5, 1.0105], [386.6, 1.0105]]] },
    gaps: [{ fromHour: 120, toHour: 148 }],
    crashSet: 2,
    says: "Gravity fell from 1.050 to 1.0105 within six days and stayed there; at 13 °C in contact with the hops nothing moved, and the crash reached 2 °C in 16 hours.",
    notes: ["The log has no rows between day 5.0 and day 6.2."],
  };
}

export function ledger(): LedgerReport {
  return {
    into: 21.7, intoPlusMinus: 0.29, transferred: 18.95, transferredPlusMinus: 0.12,
    entries: [
      { to: "samples", litres: 0.12, plusMinus: 0.01, what: "2026-01-31 10:15", from: ["samples[0].volume"] },
      { to: "samples", litres: 0.12, plusMinus: 0.01, what: "2026-02-02 19:40", from: ["samples[1].volume"] },
      { to: "samples", litres: 0.5, plusMinus: 0.02, what: "2026-02-03 18:50", from: ["samples[2].volume"] },
      { to: "dumps", litres: 0.5, plusMinus: 0.29, what: "2026-02-03 18:30", from: ["dumps[0].volume"] },
      { to: "dumps", litres: 0.4, plusMinus: 0.29, what: "2026-02-09 18:30", from: ["dumps[1].volume"] },
      { to: "left", litres: 1, plusMinus: 0.29, from: ["transfer.left"] },
      { to: "unaccounted", litres: 0.36, from: ["fermenter.volume", "package.volume"] },
      { to: "package", litres: 18.7, plusMinus: 0.12, what: "keg", from: ["package.volume"] },
    ],
    unaccountedPlusMinus: 0.6,
    hopLoss: { low: 0, high: 0.92, source: "common practice: up to 10 L per kg of hops" },
    says: "Of 21.7 L in the fermenter 18.7 L reached the keg; 0.4 L isn't accounted for, within the readings' own 0.6 L.",
  };
}

export function seasonSeries(batches = 14): SeasonSeries {
  const random = noise(5);
  return {
    figure: "dry-hop-dose", title: "Dry-hop dose", unit: "g/L",
    points: Array.from({ length: batches }, (_, index) => ({
      batch: `TP-${String(index + 1).padStart(2, "0")}`, slug: `tp-${index + 1}`, title: `Pale ${index + 1}`, brewed: "2026-01-24",
      value: Math.max(0, 4 + index * 0.35 + random() * 2.5), plusMinus: 0.12 + Math.abs(random()) * 0.2,
    })),
    without: [{ batch: "LW-01", why: "dry_hops isn't recorded" }],
    says: "Doses rose over the season from about 4 to about 8 g/L.",
  };
}

/** A season's figure with limits, the twelfth batch beyond the upper one. */
export function controlSeries(batches = 16, standing: "none" | "provisional" | "set" = "set"): SeasonSeries {
  const series = seasonSeries(batches);
  const points = series.points.map((point, index) => ({ ...point, value: index === 11 ? 90 : 72 + index % 4 }));
  return {
    ...series, figure: "brewhouse-efficiency", title: "Brewhouse efficiency", unit: "%", points,
    control: {
      standing, center: 74.5, lower: 65, upper: 84, movingRanges: points.slice(1).map(({ value }, index) => Math.abs(value - (points[index]?.value ?? 0))),
      meanMovingRange: 3.6, movingRangeUpper: 11.8, says: "One signal.",
      signals: standing === "none" ? [] : [{ batch: "TP-12", slug: "tp-12", rule: "beyond-limit", side: "above", different: ["the only one with vessel b"], says: "TP-12 above the upper limit." }],
    },
    says: "Sixteen batches around 74.5 %, one of them beyond the limits.",
  };
}

export function pooled(): PooledReport {
  return {
    attribute: "orange peel", estimate: 1.6, low: 1.2, high: 2, between: 0.3, heterogeneity: 0.2, nextLow: 0.9, nextHigh: 2.3, clear: true,
    tastings: Array.from({ length: 7 }, (_, index) => ({ batch: `TP-${String(index + 1).padStart(2, "0")}`, slug: `tp-${index + 1}`, lift: 1 + 0.2 * index, tasters: 8, ...(index === 0 ? {} : { low: 0.2 * index, high: 2 + 0.2 * index }) })),
    says: "Orange peel: +1.6 (1.2 to 2.0) over 7 batches; a rise from before to after is shown over the season.",
  };
}

export function groups(): GroupReport {
  return {
    by: "vessel", byTitle: "Vessel", y: "loss-total", yTitle: "Total loss", yUnit: "L", n: 5, claim: "none", onPage: true,
    groups: [
      { name: "quayside-40", mean: 2.5, points: [{ batch: "TP-01", slug: "tp-01", y: 2 }, { batch: "TP-02", slug: "tp-02", y: 3 }, { batch: "TP-03", slug: "tp-03", y: 2.5 }] },
      { name: "bucket", mean: 1.5, points: [{ batch: "TP-04", slug: "tp-04", y: 1.4 }, { batch: "TP-05", slug: "tp-05", y: 1.6 }] },
    ],
    says: "Total loss by vessel: 5 batches (3 quayside-40 and 2 bucket) are too few to compare.",
  };
}

export function versionFigure(versions = 10): VersionFigure {
  return {
    figure: "dry-hop-dose", title: "Dry-hop dose", unit: "g/L", says: "Ten versions, from 2.0 g/L in TP-01 to 6.5 g/L in TP-10.",
    points: Array.from({ length: versions }, (_, index) => ({ batch: `TP-${String(index + 1).padStart(2, "0")}`, value: 2 + index / 2, plusMinus: 0.2 })),
  };
}

export function relation(): RelationReport {
  const random = noise(77);
  const points = Array.from({ length: 14 }, (_, index) => {
    const x = index * 0.85;
    return { batch: `TP-${String(index + 1).padStart(2, "0")}`, slug: `tp-${index + 1}`, x, y: 1.6 + 0.17 * x + random() * 0.5 };
  });
  const line = Array.from({ length: 9 }, (_, index) => {
    const x = index / 8 * 11.05;
    const half = 0.18 + 0.05 * Math.abs(x - 5.5) ;
    return { x, y: 1.6 + 0.17 * x, low: 1.6 + 0.17 * x - half, high: 1.6 + 0.17 * x + half };
  });
  return {
    x: "dry-hop-dose", xTitle: "Dry-hop dose", xUnit: "g/L", y: "loss-total", yTitle: "Loss, all of it", yUnit: "L", n: 14,
    points, slope: 0.17, low: 0.1, high: 0.24, p: 0.0004, adjusted: 0.002, claim: "shown", first: true, onPage: true, line,
    says: "Each further gram a litre went with 0.17 L more lost (0.10 to 0.24).",
  };
}

export function attribute(): AttributeReport {
  return {
    attribute: "orange peel", primary: true, tasters: 8, meanBefore: 3.375, meanAfter: 5.25, lift: 1.875, low: 0.7, high: 3.05, p: 0.0156,
    pairs: [["T01", 3, 5], ["T02", 4, 6], ["T03", 2, 6], ["T04", 5, 5], ["T05", 3, 4], ["T06", 4, 7], ["T07", 2, 5], ["T08", 4, 4]],
  };
}

export function count(): CountReport {
  return { correct: 9, tasters: 12, p: 0.0039, share: 0.75, low: 0.43, high: 0.945, chance: 1 / 3 };
}

export function dryHops(): readonly DryHopReport[] {
  const shared = { form: "pellet", into: "fermenter", added: "2026-02-03 19:10", notes: [] } as const;
  return [
    { ...shared, hop: "Cascade", slug: "cascade", grams: 92, temperatureMean: 13.1, temperatureLow: 12.4, temperatureHigh: 14.2 },
    { ...shared, hop: "Chinook", slug: "chinook", temperatureMean: 12.8, temperatureLow: 12.4, temperatureHigh: 13.3 },
  ];
}
