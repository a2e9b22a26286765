import { rm } from "node:fs/promises";
import path from "node:path";
import { formatProblems } from "../../problems/index.js";
import { writeSite } from "../../site/index.js";
import { type Call, isGiven, textOption } from "../arguments.js";
import { parseAsOf } from "../as-of.js";
import { planSite } from "../build.js";
import type { Effects, ExitCode } from "../effects.js";
import { logFolder } from "../log-folder.js";
import { refuseUnsafeOutput, replaceFolder } from "../output-folder.js";
import { startProgress } from "../progress.js";

/** `gylebook build`: the whole site, put in place at once when it is complete. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const asOf = textOption(call, "as-of");
  const log = await logFolder(call.words[0], effects);
  const out = path.resolve(effects.workingFolder, textOption(call, "out") ?? "_site");
  const options = { log, keepGoing: isGiven(call, "keep-going"), ...(asOf === undefined ? {} : { asOf: parseAsOf(asOf) }) };
  await refuseUnsafeOutput(out, log);
  if (isGiven(call, "cold")) await rm(effects.cacheFolder, { recursive: true, force: true });

  const progress = startProgress(effects, isGiven(call, "debug"));
  const { problems, leftOut, output } = await planSite(options, effects, progress);
  if (output !== undefined) {
    progress.say("Writing the site");
    await replaceFolder(out, (fresh) => writeSite(output, fresh));
  }
  progress.done();

  if (problems.length > 0) effects.complain(`${formatProblems(problems, "text")}\n`);
  if (leftOut.length > 0) effects.complain(`Left out of the site:\n${leftOut.map((line) => `  ${line}\n`).join("")}`);
  effects.complain(ending(output?.pages.length, out, effects));
  return problems.some(({ severity }) => severity === "error") ? 1 : 0;
}

function ending(pages: number | undefined, out: string, effects: Effects): string {
  const place = path.relative(effects.workingFolder, out) || out;
  if (pages === undefined) return `Nothing was built; ${place} is as it was.\n`;
  return effects.isTerminal ? `Wrote ${pages} files to ${place}. Open ${path.join(place, "index.html")} in a browser.\n` : "";
}
