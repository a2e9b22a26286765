import { median } from "../statistics/index.js";
import { figureAxis, SETTINGS, type Axis } from "./season-axes.js";
import { GROUPINGS } from "./season-groupings.js";
import { quantityText } from "./season-quantities.js";
import type { BatchReport } from "./types.js";

interface Named {
  readonly words: string;
  readonly groupOf: (batch: BatchReport) => string | undefined;
}

const NAMED: readonly Named[] = [
  ...GROUPINGS,
  { words: "style", groupOf: ({ style }) => style },
  { words: "brewer", groupOf: ({ brewer }) => brewer },
];

const MEASURED: readonly Axis[] = [...SETTINGS, figureAxis("original-gravity"), figureAxis("fermentation-temperature")];

/**
 * What sets one batch apart from the season's others by the record: what no other has, and where it is the
 * highest or lowest by more than the readings leave open. Not a cause: what to look at first.
 *
 * @param others without the batch itself
 */
export function aloneIn(batch: BatchReport, others: readonly BatchReport[]): string[] {
  return [
    ...NAMED.flatMap(({ words, groupOf }) => {
      const name = groupOf(batch);
      return name === undefined || others.some((other) => groupOf(other) === name) ? [] : [`the only one with ${words} ${name}`];
    }),
    ...MEASURED.flatMap((axis) => extremeIn(axis, batch, others)),
  ];
}

function extremeIn({ valueOf, words, unit }: Axis, batch: BatchReport, others: readonly BatchReport[]): string[] {
  const own = valueOf(batch);
  const known = others.flatMap((other) => valueOf(other) ?? []);
  if (own === undefined || known.length < 2) return [];
  const beyond = (sign: 1 | -1): boolean =>
    known.every(({ value, plusMinus = 0 }) => sign * (own.value - value) > Math.hypot(plusMinus, own.plusMinus ?? 0));
  const most = beyond(1) ? "highest" : beyond(-1) ? "lowest" : undefined;
  return most === undefined ? [] : [`the ${most} ${words} (${quantityText(own.value, unit, own.plusMinus)})`];
}

/** What all of a run share and fewer than half of the others have; and what lies on one side of the others' middle in all of them. */
export function sharedIn(run: readonly BatchReport[], others: readonly BatchReport[]): string[] {
  if (others.length === 0) return [];
  return [
    ...NAMED.flatMap(({ words, groupOf }) => {
      const name = run[0] === undefined ? undefined : groupOf(run[0]);
      const shared = name !== undefined && run.every((batch) => groupOf(batch) === name);
      return shared && others.filter((other) => groupOf(other) === name).length * 2 < others.length ? [`all with ${words} ${name}`] : [];
    }),
    ...MEASURED.flatMap(({ valueOf, words, unit }) => {
      const [own, known] = [run.flatMap((batch) => valueOf(batch)?.value ?? []), others.flatMap((batch) => valueOf(batch)?.value ?? [])];
      if (own.length < run.length || known.length < 2) return [];
      const middle = median(known);
      const side = own.every((value) => value > middle) ? "above" : own.every((value) => value < middle) ? "below" : undefined;
      return side === undefined ? [] : [`${words} ${side} the others' middle value of ${quantityText(middle, unit)} in all of them`];
    }),
  ];
}
