import type { Problem } from "../../problems/index.js";
import type { PartialBatch } from "../schema/index.js";
import type { FieldPath } from "../text/yaml-places.js";
import type { CivilTime } from "../time/index.js";
import { isSurelyBefore, lastTransfer, problem, type RecordRule } from "./in-record.js";

interface Event {
  readonly path: FieldPath;
  readonly at: CivilTime;
}

/** Hops are removed after they went in, and before the transfer. */
export const removalFollowsAddition: RecordRule = (input) => (input.batch.dryHops ?? []).flatMap(({ added, removed, into }, index) => {
  if (removed === undefined) return [];
  const path = ["dry_hops", index, "removed"];
  if (added !== undefined && isSurelyBefore(removed, added)) return [problem(input, path, "record/removed-before-added", { added: added.text })];
  const transfer = lastTransfer(input.batch);
  const isAfter = transfer !== undefined && into !== "keg" && isSurelyBefore(transfer, removed);
  return isAfter ? [problem(input, path, "record/removed-after-transfer", { transfer: transfer.text })] : [];
});

/** Hops go into the fermenter while it holds beer. */
export const dryHopPrecedesTransfer: RecordRule = (input) => {
  const transfer = lastTransfer(input.batch);
  if (transfer === undefined) return [];
  return (input.batch.dryHops ?? []).flatMap(({ added, into }, index) =>
    (added !== undefined && into !== "keg" && isSurelyBefore(transfer, added)
      ? [problem(input, ["dry_hops", index, "added"], "record/dry-hop-after-transfer", { transfer: transfer.text })] : []));
};

/** Nothing happens to a batch before it is brewed. */
export const nothingPrecedesBrewDay: RecordRule = (input) => {
  const { brewed } = input.batch;
  if (brewed === undefined) return [];
  return eventsOf(input.batch).filter(({ at }) => isSurelyBefore(at, dayOf(brewed)))
    .map(({ path }) => problem(input, path, "record/event-before-brew-day", { brewed: brewed.date }));
};

/** Cooling before the last move, packaging not before the first. */
export const stepsFollowEachOther: RecordRule = (input) => {
  const { batch } = input;
  const moves = (batch.transfer ?? []).flatMap(({ at }) => (at === undefined ? [] : [at]));
  const last = lastTransfer(batch);
  const problems: Problem[] = [];
  const crash = batch.crash?.from;
  if (crash !== undefined && last !== undefined && isSurelyBefore(last, crash)) {
    problems.push(problem(input, ["crash", "from"], "record/events-out-of-order", { event: "the transfer", after: "the crash", when: crash.text }));
  }
  for (const [index, { date }] of (batch.package ?? []).entries()) {
    const isBeforeAll = date !== undefined && moves.length > 0 && moves.every((move) => isSurelyBefore(date, move));
    const first = moves[0];
    if (isBeforeAll && first !== undefined) problems.push(problem(input, ["package", index, "date"], "record/events-out-of-order", { event: "packaging", after: "the transfer", when: first.text }));
  }
  return problems;
};

/** What is left after the transfer is not dumped a second time. */
export const dumpsPrecedeTransfer: RecordRule = (input) => {
  const transfer = lastTransfer(input.batch);
  if (transfer === undefined) return [];
  return (input.batch.dumps ?? []).flatMap(({ at }, index) =>
    (at !== undefined && isSurelyBefore(transfer, at) ? [problem(input, ["dumps", index, "at"], "record/dump-after-transfer", { transfer: transfer.text })] : []));
};

function eventsOf(batch: PartialBatch): Event[] {
  const listed = (name: string, key: string, times: readonly (CivilTime | undefined)[] | undefined): Event[] =>
    (times ?? []).flatMap((at, index) => (at === undefined ? [] : [{ path: [...name.split("."), index, key], at }]));
  const single = (path: FieldPath, at: CivilTime | undefined): Event[] => (at === undefined ? [] : [{ path, at }]);
  return [
    ...single(["yeast", "pitched"], batch.yeast?.pitched),
    ...listed("fermentation.readings", "at", batch.fermentation?.readings?.map(({ at }) => at)),
    ...listed("additions", "at", batch.additions?.map(({ at }) => at)),
    ...listed("samples", "at", batch.samples?.map(({ at }) => at)),
    ...listed("dry_hops", "added", batch.dryHops?.map(({ added }) => added)),
    ...single(["crash", "from"], batch.crash?.from),
    ...listed("dumps", "at", batch.dumps?.map(({ at }) => at)),
    ...listed("transfer", "at", batch.transfer?.map(({ at }) => at)),
    ...listed("package", "date", batch.package?.map(({ date }) => date)),
    ...listed("tastings", "date", batch.tastings?.map(({ date }) => date)),
  ];
}

const dayOf = ({ date }: CivilTime): CivilTime => ({ text: date, date });
