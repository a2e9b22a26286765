/** What a row's inputs are turned into: one number, or several where the row lists several. */
export type RowComputation = (inputs: string) => number | readonly number[];

/** Row computations by the row's case, as printed in check_values.csv. */
export type RowComputations = Readonly<Record<string, RowComputation>>;

/** The numbers of a row's inputs, in order: "1 oz 5.5 % AA, 60 min" gives 1, 5.5, 60. */
export function numbersIn(inputs: string): number[] {
  return [...inputs.matchAll(/(?<![\w.])-?\d+(?:\.\d+)?(?:e-?\d+)?/gu)].map(([text]) => Number(text));
}

/** The number behind a name: named("OE=14.08, AE=3.11", "AE") is 3.11. */
export function named(inputs: string, name: string): number {
  const found = inputs.split(/[,:]\s*/u).find((part) => part.startsWith(`${name}=`));
  const value = Number.parseFloat(found?.slice(name.length + 1) ?? "");
  if (Number.isNaN(value)) throw new Error(`"${inputs}" names no ${name}`);
  return value;
}

/** The number at a place, which the row must have. */
export function numberAt(inputs: string, index: number): number {
  const value = numbersIn(inputs)[index];
  if (value === undefined) throw new Error(`"${inputs}" has no number at ${index}`);
  return value;
}

/** Mass as a balance shows it in air, kg: the air lifts the liquid more than the brass weights. */
export function weighedInAir(massKg: number, kgPerL: number): number {
  const airKgPerL = 0.0012;
  const brassKgPerL = 8.4;
  return (massKg * (1 - airKgPerL / kgPerL)) / (1 - airKgPerL / brassKgPerL);
}
