import { OWN_UNIT, unitsOf, type QuantityKind } from "../../../units/index.js";

interface KindWords {
  readonly noun: string;
  readonly example: string;
  /** What can be right for any field of the kind, in its own unit. */
  readonly low: number;
  readonly high: number;
  /** Whether the upper limit only catches slips and means nothing to a brewer. */
  readonly open?: true;
}

/** Limits are wide: they catch a slipped digit or unit, not an unusual beer. */
const KINDS: Readonly<Record<QuantityKind, KindWords>> = {
  mass: { noun: "a mass", example: "70 g", low: 0, high: 1e7, open: true },
  volume: { noun: "a volume", example: "19.2 L", low: 0, high: 1e5, open: true },
  temperature: { noun: "a temperature", example: "18 C", low: -40, high: 150 },
  gravity: { noun: "a gravity", example: "1.048", low: 0.98, high: 1.2 },
  time: { noun: "a length of time", example: "30 min", low: 0, high: 87_600, open: true },
  pressure: { noun: "a pressure", example: "100 kPa", low: 0, high: 5000, open: true },
  carbonation: { noun: "a carbonation", example: "2.4 vol", low: 0, high: 10 },
  color: { noun: "a colour", example: "5 EBC", low: 0, high: 3000 },
  dose: { noun: "a dose", example: "5 g/L", low: 0, high: 200 },
  concentration: { noun: "a concentration", example: "85 mg/L", low: 0, high: 20_000, open: true },
  rate: { noun: "a rate", example: "3.2 L/h", low: 0, high: 10_000, open: true },
  length: { noun: "a height", example: "0 m", low: -500, high: 9000 },
  oil: { noun: "an oil content", example: "1.3 mL/100g", low: 0, high: 20 },
  share: { noun: "a share", example: "80 %", low: 0, high: 100 },
};

export interface QuantityLimits {
  readonly example?: string;
  readonly default?: string;
  /** In the kind's own unit, where narrower than for the kind. */
  readonly low?: number;
  readonly high?: number;
}

/** Words and limits of a field that holds a quantity. */
export function quantityWords(kind: QuantityKind, { example, low, high, default: absent }: QuantityLimits) {
  const words = KINDS[kind];
  const shown = example ?? words.example;
  const ownUnit = kind === "gravity" ? "" : ` ${OWN_UNIT[kind]}`;
  const [least, most] = [low ?? words.low, high ?? words.high];
  return {
    noun: words.noun, example: shown, expects: `${words.noun} such as "${shown}"`,
    low: least, high: most, ownUnit, range: words.open && high === undefined ? `${least}${ownUnit} or more` : `${least} to ${most}${ownUnit}`,
    unit: unitsOf(kind).join(", "), ...(absent === undefined ? {} : { default: absent }),
  };
}

export type QuantityWords = ReturnType<typeof quantityWords>;
