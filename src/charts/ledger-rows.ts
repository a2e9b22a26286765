import type { LedgerDestination, LedgerEntry, LedgerReport } from "../report/index.js";
import type { DisplayUnit } from "./display-unit.js";

/** One row of the ledger's drawing, volumes in the unit that is drawn. */
export interface LedgerRow {
  /** kept: in the fermenter or a package; lost: left on the way; open: not accounted for; mark: a reading or an expectation to compare with. */
  readonly kind: "kept" | "lost" | "open" | "mark";
  readonly name: string;
  readonly value: string;
  readonly from: number;
  readonly to: number;
  /** What is left after this row: where the next one begins. */
  readonly left: number;
  /** The end that the uncertainty is drawn through, with its half-width. */
  readonly uncertainEnd: number;
  readonly plusMinus?: number;
}

const ORDER: readonly LedgerDestination[] = ["samples", "dumps", "left", "unaccounted", "package"];
const NAMES: Readonly<Record<LedgerDestination, string>> = {
  samples: "sample", dumps: "dumped", left: "left in the vessel", unaccounted: "not accounted for", package: "packaged",
};
const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];
/** More samples than this share one row. */
const MOST_SAMPLES = 4;

/** The beer step by step: what went in, each part that left it, what was packaged; with the transfer and the hops' usual share to compare. */
export function ledgerRows(ledger: LedgerReport, unit: DisplayUnit): readonly LedgerRow[] {
  let left = ledger.into;
  const rows = [row(unit, { kind: "kept", name: "into the fermenter", from: 0, to: left, left, uncertainEnd: left }, ledger.intoPlusMinus)];
  for (const destination of ORDER) {
    for (const entry of entriesTo(ledger, destination)) {
      rows.push(entryRow(unit, entry, left, entry.plusMinus ?? (destination === "unaccounted" ? ledger.unaccountedPlusMinus : undefined)));
      left -= entry.litres;
    }
    if (destination === "left" && ledger.transferred !== undefined) rows.push(transferRow(unit, ledger.transferred, ledger.transferredPlusMinus));
    if (destination === "unaccounted" && ledger.hopLoss !== undefined) rows.push(hopRow(unit, ledger, ledger.hopLoss));
  }
  return rows;
}

/** Sums of litres leave dust behind: nothing is drawn finer than a tenth of a millilitre. */
const DUST_L = 1e-4;

function entriesTo(ledger: LedgerReport, destination: LedgerDestination): readonly LedgerEntry[] {
  const entries = ledger.entries.filter((entry) => entry.to === destination);
  if (destination !== "samples" || entries.length <= MOST_SAMPLES) return entries;
  const litres = entries.reduce((sum, entry) => sum + entry.litres, 0);
  return [{ to: "samples", litres, what: `in ${entries.length} draws`, from: [] }];
}

function entryRow(unit: DisplayUnit, entry: LedgerEntry, before: number, plusMinus: number | undefined): LedgerRow {
  const after = Math.abs(before - entry.litres) < DUST_L ? 0 : before - entry.litres;
  const isPackage = entry.to === "package";
  const kind = isPackage ? "kept" : entry.to === "unaccounted" ? "open" : "lost";
  const placed = {
    kind, name: nameOf(entry), from: Math.min(before, after), to: Math.max(before, after), left: after, uncertainEnd: isPackage ? before : after,
  } as const;
  const sign = isPackage ? "" : entry.litres < 0 ? "+" : "−";
  return { ...row(unit, placed, plusMinus), value: sign + unit.format(Math.abs(entry.litres), plusMinus) };
}

function transferRow(unit: DisplayUnit, litres: number, plusMinus: number | undefined): LedgerRow {
  return row(unit, { kind: "mark", name: "transferred, as read", from: 0, to: litres, left: litres, uncertainEnd: litres }, plusMinus);
}

/** Where the beer would stand after the vessel was emptied, if hops held what they usually do. */
function hopRow(unit: DisplayUnit, ledger: LedgerReport, usual: { readonly low: number; readonly high: number }): LedgerRow {
  const drawnOff = ledger.entries.filter((entry) => entry.to === "samples" || entry.to === "dumps").reduce((sum, entry) => sum + entry.litres, 0);
  const before = ledger.into - drawnOff;
  const placed = { kind: "mark", name: "hops usually hold", from: before - usual.high, to: before - usual.low, left: before, uncertainEnd: before } as const;
  return { ...row(unit, placed, undefined), value: `${unit.formatValue(usual.low)} to ${unit.format(usual.high)}` };
}

/** A row from volumes in litres. */
function row(unit: DisplayUnit, placed: Omit<LedgerRow, "value" | "plusMinus">, plusMinus: number | undefined): LedgerRow {
  const { from, to, left, uncertainEnd } = placed;
  return {
    ...placed, from: unit.convert(from), to: unit.convert(to), left: unit.convert(left), uncertainEnd: unit.convert(uncertainEnd),
    value: unit.format(to - from, plusMinus), ...(plusMinus === undefined ? {} : { plusMinus: unit.convertDifference(plusMinus) }),
  };
}

function nameOf(entry: LedgerEntry): string {
  const name = NAMES[entry.to];
  if (entry.what === undefined || name.endsWith(entry.what)) return name;
  const date = /^\d{4}-(\d\d)-(\d\d)/.exec(entry.what);
  const what = date === null ? entry.what : `${Number(date[2])} ${MONTHS[Number(date[1]) - 1] ?? ""}`;
  return entry.to === "package" ? what : `${name}, ${what}`;
}
