import { isMissing } from "../known.js";
import type { Scene } from "../scene.js";
import { found, plain, unknown, type CheckDefinition, type Finding } from "./definition.js";

const TERMINAL_PASS_H = 48;
const TERMINAL_WATCH_H = 24;

/** Whether fermentation was over, and clean, before the next step began. */
export const fermentationChecks: readonly CheckDefinition[] = [
  {
    id: "terminal-before-dry-hop",
    title: "Terminal before the dry hop",
    says: "Gravity unchanged within 0.001 for 48 h or more before the hops went in: common practice. Not asked of a dry hop meant for fermenting beer.",
    find: terminalBeforeDryHop,
  },
  {
    id: "vdk-before-crash",
    title: "Diacetyl clear before the crash",
    says: "A forced test read clear after the last fermentation activity and before the beer was cooled: common practice. Cold beer no longer takes diacetyl up.",
    find: vdkBeforeCrash,
  },
];

function terminalBeforeDryHop(scene: Scene): Finding | undefined {
  if (scene.firstDryHop === undefined) return undefined;
  const planned = scene.batch.plan?.dryHopWhen;
  if (planned === "fermenting") {
    return found("pass", "plan", ["plan.dry_hop_when"], "The plan asks for hops in fermenting beer, so terminal gravity isn't expected here.");
  }
  const hours = scene.figure("terminal-hours");
  if (isMissing(hours)) return unknown("common practice", hours.missing);
  const says = hours.value === 0
    ? "The two latest readings before the dry hop still differ by more than 0.001."
    : `Gravity had been unchanged within 0.001 for ${plain(hours.value, "h")} when the hops went in; common practice asks for ${TERMINAL_PASS_H} h.`;
  const verdict = hours.value >= TERMINAL_PASS_H ? "pass" : hours.value >= TERMINAL_WATCH_H ? "watch" : "fail";
  return found(verdict, "common practice", ["terminal-hours"], says);
}

function vdkBeforeCrash(scene: Scene): Finding | undefined {
  const crash = scene.crashStart;
  if (crash === undefined) return undefined;
  const tests = (scene.batch.fermentation?.readings ?? []).flatMap((reading, index) => {
    const moment = scene.moment(`fermentation.readings[${index}].at`, reading.at);
    return moment === undefined || reading.diacetyl === undefined || moment.hour > crash.hour ? [] : [{ moment, result: reading.diacetyl, field: `fermentation.readings[${index}].diacetyl` }];
  });
  const last = tests.sort((a, b) => a.moment.hour - b.moment.hour).at(-1);
  if (last === undefined) return unknown("common practice", "no forced diacetyl test is recorded before the crash");
  if (last.result === "present") return found("fail", "common practice", [last.field], `The last forced test before the crash, ${last.moment.at}, found diacetyl.`);
  const hops = scene.firstDryHop;
  const before = hops !== undefined && last.moment.hour < hops.hour && hops.hour < crash.hour;
  return before
    ? found("watch", "common practice", [last.field], `The last forced test, ${last.moment.at}, was clear but came before the dry hop; hops can bring diacetyl back, and none was made after it.`)
    : found("pass", "common practice", [last.field], `The forced test of ${last.moment.at} was clear.`);
}
