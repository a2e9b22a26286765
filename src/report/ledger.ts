import { dryHopLoss } from "../science/index.js";
import { formatNumber } from "../units/index.js";
import { dryHopsOf } from "./dry-hops.js";
import { flowsOf, transferredTotal, volumeInto, type Flow } from "./flows.js";
import { isMissing, plusMinusOf, type Known } from "./known.js";
import type { Scene } from "./scene.js";
import type { LedgerDestination, LedgerEntry, LedgerReport } from "./types.js";

/** Common practice: between nothing and this much beer stays in a kilogram of hops without being seen elsewhere. */
export const MOST_UNSEEN_L_PER_KG = 10;

/**
 * The ledger from fermenter to package. Undefined while a volume is missing that
 * would leave litres unexplained: the figures then say which.
 */
export function ledgerReport(scene: Scene): LedgerReport | undefined {
  const into = volumeInto(scene);
  const unaccounted = scene.figure("loss-unaccounted");
  if (isMissing(into) || isMissing(unaccounted)) return undefined;
  const flows = flowsOf(scene);
  const transferred = transferredTotal(scene);
  const hopLoss = hopLossOf(scene);
  return {
    into: into.value,
    ...optional("intoPlusMinus", plusMinusOf(into)),
    ...(isMissing(transferred) ? {} : { transferred: transferred.value, ...optional("transferredPlusMinus", plusMinusOf(transferred)) }),
    entries: [
      ...flows.samples.flatMap((flow) => entryOf("samples", flow)),
      ...flows.dumps.flatMap((flow) => entryOf("dumps", flow)),
      ...flows.left.flatMap((flow) => entryOf("left", flow)),
      ...flows.packaged.flatMap((flow) => entryOf("package", flow)),
      { to: "unaccounted", litres: unaccounted.value, ...optional("plusMinus", plusMinusOf(unaccounted)), from: ["loss-unaccounted"] },
    ],
    ...optional("unaccountedPlusMinus", plusMinusOf(unaccounted)),
    ...(hopLoss === undefined ? {} : { hopLoss }),
    says: sayWhetherItCloses(scene, unaccounted),
  };
}

function entryOf(to: LedgerDestination, flow: Flow): LedgerEntry[] {
  if (isMissing(flow.volume)) return [];
  return [{ to, litres: flow.volume.value, ...optional("plusMinus", plusMinusOf(flow.volume)), what: flow.what, from: [flow.field] }];
}

/** What the hops can be expected to hold, by form, L. */
function hopLossOf(scene: Scene): LedgerReport["hopLoss"] {
  const additions = dryHopsOf(scene);
  const ranges = additions.flatMap(({ mass, form, held }) => {
    if (isMissing(mass) || (form !== "pellet" && form !== "cone" && form !== "concentrate")) return [];
    const { lowLPerKg, highLPerKg, source } = dryHopLoss(form, held === "bag" ? "bag" : "loose");
    return [{ low: lowLPerKg * mass.value / 1000, high: highLPerKg * mass.value / 1000, source }];
  });
  if (ranges.length === 0 || ranges.length < additions.length) return undefined;
  const sum = (key: "low" | "high"): number => ranges.reduce((total, range) => total + range[key], 0);
  return { low: sum("low"), high: sum("high"), source: [...new Set(ranges.map((range) => range.source))].join("; ") };
}

/** How far an unexplained volume may go by hops alone, L. */
export function mostUnseen(scene: Scene): number {
  const mass = scene.figure("dry-hop-mass");
  return isMissing(mass) ? 0 : MOST_UNSEEN_L_PER_KG * mass.value / 1000;
}

/** Litres beyond what hops and the readings' uncertainty explain: 0 when the ledger closes, below 0 when more came out than went in. */
export function unexplained(scene: Scene, unaccounted: Known): number {
  const within = plusMinusOf(unaccounted) ?? 0;
  if (unaccounted.value < -within) return unaccounted.value + within;
  return Math.max(0, unaccounted.value - within - mostUnseen(scene));
}

function sayWhetherItCloses(scene: Scene, unaccounted: Known): string {
  const beyond = unexplained(scene, unaccounted);
  const hops = scene.figure("dry-hop-mass");
  const { value, unit, plusMinus } = formatNumber(unaccounted.value, "L", plusMinusOf(unaccounted));
  const found = `${value}${plusMinus === undefined ? "" : ` ± ${plusMinus}`} ${unit} unaccounted`;
  if (beyond === 0) return `The ledger closes: ${found}, which the readings and the beer held by hops can explain.`;
  if (beyond > 0 && isMissing(hops)) return `${found}: more than the readings can be off by. Whether hops explain it can't be told, since ${hops.missing}.`;
  const by = formatNumber(Math.abs(beyond), "L");
  const widest = widestReading(unaccounted);
  const settle = widest === undefined ? "" : ` The reading that would settle it most is ${widest}.`;
  return beyond < 0
    ? `More beer came out than went in: ${found}, ${by.value} L beyond what the readings can be off by.${settle}`
    : `The ledger doesn't close: ${found}, ${by.value} L more than hops and the readings' uncertainty explain.${settle}`;
}

function widestReading(known: Known): string | undefined {
  return Object.entries(known.contributions).sort((a, b) => Math.abs(b[1]) - Math.abs(a[1]))[0]?.[0];
}

function optional<K extends string>(key: K, value: number | undefined): { readonly [P in K]?: number } {
  return value === undefined ? {} : { [key]: value } as { readonly [P in K]: number };
}
