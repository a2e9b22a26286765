import { rm } from "node:fs/promises";
import path from "node:path";
import { formatProblems } from "../../problems/index.js";
import { writeSite } from "../../site/index.js";
import { type Call, isGiven, textOption } from "../arguments.js";
import { parseAsOf } from "../as-of.js";
import { type PlannedOutput, type PlannedPage, planSite } from "../build.js";
import type { Effects, ExitCode } from "../effects.js";
import { logFolder } from "../log-folder.js";
import { refuseUnsafeOutput, replaceFolder } from "../output-folder.js";
import { type Progress, startProgress } from "../progress.js";

/** `gylebook build`: the whole site, put in place at once when it is complete. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const asOf = textOption(call, "as-of");
  const log = await logFolder(call.words[0], effects);
  const out = path.resolve(effects.workingFolder, textOption(call, "out") ?? "_site");
  const options = { log, keepGoing: isGiven(call, "keep-going"), ...(asOf === undefined ? {} : { asOf: parseAsOf(asOf) }) };
  await refuseUnsafeOutput(out, log);
  if (isGiven(call, "cold")) await rm(effects.cacheFolder, { recursive: true, force: true });

  const progress = startProgress(effects, isGiven(call, "debug"));
  const { problems, leftOut, output, chartMs } = await planSite(options, effects, progress);
  if (output !== undefined) {
    await replaceFolder(out, (fresh) => writeSite(counted(output, progress), fresh));
  }
  progress.done();
  if (isGiven(call, "debug") && chartMs !== undefined) effects.complain(`Of which drawing charts, all threads together: ${chartMs().toFixed(0)} ms\n`);

  if (problems.length > 0) effects.complain(`${formatProblems(problems, "text")}\n`);
  if (leftOut.length > 0) effects.complain(`Left out of the site:\n${leftOut.map((line) => `  ${line}\n`).join("")}`);
  effects.complain(ending(output?.pages.length, out, effects));
  return problems.some(({ severity }) => severity === "error") ? 1 : 0;
}

/** The same pages, which say how far the writing has come. */
function counted({ pages, assets }: PlannedOutput, progress: Progress): PlannedOutput {
  let written = 0;
  const render = (page: PlannedPage) => (): Promise<string> => {
    written += 1;
    progress.say(`Writing the site: file ${written} of ${pages.length}`);
    return page.render();
  };
  return { pages: pages.map((page) => ({ ...page, render: render(page) })), assets };
}

function ending(pages: number | undefined, out: string, effects: Effects): string {
  const place = path.relative(effects.workingFolder, out) || out;
  if (pages === undefined) return `Nothing was built; ${place} is as it was.\n`;
  return effects.isTerminal ? `Wrote ${pages} files to ${place}. Open ${path.join(place, "index.html")} in a browser.\n` : "";
}
