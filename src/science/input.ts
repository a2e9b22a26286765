import { type MethodInput } from "./method-about.js";

interface Domain {
  readonly low?: number;
  readonly high?: number;
}

type DescribeInput = (symbol: string, meaning: string, domain?: Domain) => MethodInput;

const inUnit = (unit: string, low: number, high: number): DescribeInput =>
  (symbol, meaning, domain = {}) => ({ symbol, meaning, unit, low, high, ...domain });

/** The largest volume or mass taken seriously; far above any club's, far below overflow. */
const large = 1e6;

/** Least amount to divide by. */
export const leastAmount = 0.001;

/**
 * The kinds of input that many relations share, with their usual domain; each use may narrow it.
 * Gravity ends where the sucrose table does (40 P); extract goes below zero because dry beer reads so.
 */
export const input = {
  gravity: inUnit("SG", 0.98, 1.1787),
  extract: inUnit("P", -5.3, 40),
  temperature: inUnit("C", -5, 110),
  volume: inUnit("L", 0, large),
  massKg: inUnit("kg", 0, large),
  massG: inUnit("g", 0, large),
  percent: inUnit("%", 0, 100),
  hours: inUnit("h", 0, 1000),
  minutes: inUnit("min", 0, 180),
  /** A little under zero is let through: a gauge's own zero is no better. */
  gaugePressure: inUnit("kPa gauge", -50, 1000),
  atmosphericPressure: inUnit("kPa", 50, 110),
  carbonation: inUnit("vol", 0, 10),
  color: inUnit("EBC", 0, 160),
  dose: inUnit("g/L", 0, 100),
} as const satisfies Record<string, DescribeInput>;
