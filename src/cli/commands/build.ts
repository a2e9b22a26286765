import { rm } from "node:fs/promises";
import path from "node:path";
import { formatProblems } from "../../problems/index.js";
import { type CivilTime, readLogFolder } from "../../records/index.js";
import { type Call, isGiven, textOption } from "../arguments.js";
import { parseAsOf } from "../as-of.js";
import type { PlannedSite } from "../build.js";
import { type BuiltSite, builtBefore, fingerprint, noteBuilt } from "../built-before.js";
import type { Effects, ExitCode } from "../effects.js";
import { logFolder } from "../log-folder.js";
import { refuseUnsafeOutput } from "../output-folder.js";
import { startProgress } from "../progress.js";

interface Wanted {
  readonly log: string;
  readonly out: string;
  readonly keepGoing: boolean;
  readonly timed: boolean;
  readonly asOf?: CivilTime;
}

/** `gylebook build`: the whole site, put in place at once when it is complete. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const wanted = await wantedOf(call, effects);
  await refuseUnsafeOutput(wanted.out, wanted.log);
  if (isGiven(call, "cold")) await rm(effects.cacheFolder, { recursive: true, force: true });

  const inputs = fingerprint(readLogFolder(wanted.log), [wanted.asOf?.text, wanted.keepGoing]);
  const before = await builtBefore(wanted.out, inputs, effects.now(), effects.cacheFolder);
  const built = before ?? await build(wanted, inputs, effects);
  effects.complain(built.said + ending(built, before !== undefined, wanted, effects));
  return built.exit;
}

async function wantedOf(call: Call, effects: Effects): Promise<Wanted> {
  const asOf = textOption(call, "as-of");
  return {
    log: await logFolder(call.words[0], effects),
    out: path.resolve(effects.workingFolder, textOption(call, "out") ?? "_site"),
    keepGoing: isGiven(call, "keep-going"),
    timed: isGiven(call, "debug"),
    ...(asOf === undefined ? {} : { asOf: parseAsOf(asOf) }),
  };
}

async function build(wanted: Wanted, inputs: string | undefined, effects: Effects): Promise<BuiltSite> {
  // Loaded only when there is something to do: the stages and what they need take a second to load.
  const [{ planSite }, { writeWhole }] = await Promise.all([import("../build.js"), import("../write-whole.js")]);
  const progress = startProgress(effects, wanted.timed);
  const planned = await planSite(wanted, effects, progress);
  const files = planned.output === undefined ? {} : await writeWhole(planned.output, wanted.out, progress);
  progress.done();
  if (wanted.timed && planned.chartMs !== undefined) effects.complain(`Drawing charts, all threads together: ${planned.chartMs().toFixed(0)} ms\n`);
  const built: BuiltSite = {
    inputs: inputs ?? "", files, said: said(planned), exit: planned.problems.some(({ severity }) => severity === "error") ? 1 : 0,
    ...(planned.clock === undefined ? {} : { clock: planned.clock }),
  };
  if (planned.output !== undefined && inputs !== undefined) await noteBuilt(wanted.out, built, effects.cacheFolder);
  return built;
}

function said({ problems, leftOut }: PlannedSite): string {
  const listed = problems.length === 0 ? "" : `${formatProblems(problems, "text")}\n`;
  return leftOut.length === 0 ? listed : `${listed}Left out of the site:\n${leftOut.map((line) => `  ${line}\n`).join("")}`;
}

function ending({ files }: BuiltSite, wasThere: boolean, { out }: Wanted, effects: Effects): string {
  const place = path.relative(effects.workingFolder, out) || out;
  const count = Object.keys(files).length;
  if (count === 0) return `Nothing was built; ${place} is as it was.\n`;
  if (!effects.isTerminal) return "";
  return `${wasThere ? `Nothing changed since ${place} was built` : `Wrote ${count} files to ${place}`}. Open ${path.join(place, "index.html")} in a browser.\n`;
}
