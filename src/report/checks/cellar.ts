import { CAUTION } from "../cautions.js";
import { unexplained, ledgerReport } from "../ledger.js";
import { isMissing } from "../known.js";
import { latestHour } from "../moments.js";
import type { Scene } from "../scene.js";
import { found, inWords, unknown, type CheckDefinition, type Finding } from "./definition.js";

/** Handling between the crash and the package, and whether the litres add up. */
export const cellarChecks: readonly CheckDefinition[] = [
  {
    id: "dumped-before-transfer",
    title: "Sediment dumped before the transfer",
    says: "Where the vessel lets it, hops and yeast drawn off before the transfer don't travel with the beer: common practice.",
    find: dumped,
  },
  {
    id: "sanitised",
    title: "Sanitised",
    says: "Everything the beer touched at the transfer was sanitised.",
    find: sanitised,
  },
  {
    id: "ledger-closes",
    title: "Ledger closes",
    says: "What is unaccounted for lies, within the volumes' own uncertainty, between nothing and 10 L for each kilogram of dry hops.",
    find: ledgerCloses,
  },
];

function dumped(scene: Scene): Finding | undefined {
  const { dumps } = scene.batch;
  if (!scene.isMoved) return undefined;
  if (dumps === undefined) return unknown("common practice", "dumps isn't recorded");
  const moved = scene.transferMoment;
  const before = dumps.filter((dump, index) => {
    const moment = scene.moment(`dumps[${index}].at`, dump.at);
    return moment === undefined || moved === undefined || moment.hour <= latestHour(moved);
  });
  if (before.length > 0) return found("pass", "common practice", ["dumps"], `Dumped ${before.length === 1 ? "once" : `${before.length} times`} before the transfer.`);
  const { shape } = scene.equipment?.fermenter ?? {};
  return shape !== undefined && shape !== "conical"
    ? found("pass", "common practice", ["dumps"], `Nothing was dumped: this fermenter (${shape}) has no way to.`)
    : found("watch", "common practice", ["dumps"], "Nothing was dumped before the transfer: hops and yeast may have travelled with the beer.");
}

function sanitised(scene: Scene): Finding | undefined {
  if (!scene.isMoved) return undefined;
  const said = (scene.batch.transfer ?? []).map((move) => move.sanitised);
  if (said.includes(false)) return found("fail", "record", ["transfer.sanitised"], "The record says that what the beer touched wasn't sanitised.");
  if (said.includes(undefined)) return unknown("record", "transfer.sanitised isn't recorded");
  return found("pass", "record", ["transfer.sanitised"], "Recorded as sanitised.",
    CAUTION.cleaners);
}

function ledgerCloses(scene: Scene): Finding | undefined {
  if (!scene.isMoved && scene.packages.length === 0) return undefined;
  const unaccounted = scene.figure("loss-unaccounted");
  if (isMissing(unaccounted)) return unknown("common practice", unaccounted.missing);
  const beyond = unexplained(scene, unaccounted);
  const hops = scene.figure("dry-hop-mass");
  if (beyond > 0 && isMissing(hops)) return unknown("common practice", `${inWords(unaccounted)} are unaccounted for, which hops may hold, and ${hops.missing}`);
  return found(beyond === 0 ? "pass" : "fail", "common practice", ["loss-unaccounted"], ledgerReport(scene)?.says ?? "");
}
