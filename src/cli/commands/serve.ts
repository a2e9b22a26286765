import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { formatProblems } from "../../problems/index.js";
import { type Call, textOption } from "../arguments.js";
import { parseAsOf } from "../as-of.js";
import type { Effects, ExitCode } from "../effects.js";
import { ExpectedFailure } from "../expected-failure.js";
import { failureText } from "../failure-text.js";
import { logFolder } from "../log-folder.js";
import { Preview, type Update } from "../preview.js";
import { servePreview } from "../preview-server.js";
import { watchLog } from "../watch-log.js";

const DEFAULT_PORT = 8080;

/** `gylebook serve`: shows a log's site and follows every save, until stopped. */
export async function run(call: Call, effects: Effects): Promise<ExitCode> {
  const wanted = checkedPort(textOption(call, "port"));
  const asOf = textOption(call, "as-of");
  const log = await logFolder(call.words[0], effects);
  const options = { log, keepGoing: false, remembered: new Map(), ...(asOf === undefined ? {} : { asOf: parseAsOf(asOf) }) };
  const folder = await mkdtemp(path.join(tmpdir(), "gylebook-preview-"));
  const preview = new Preview(folder, hourly(effects));
  try {
    const server = await servePreview(preview, wanted);
    const report = newsReporter(effects);
    const follow = oneAtATime(async () => {
      report(await preview.update(options, server.reload));
      server.reload();
    }, effects);
    await watchLog(log, () => void follow(), effects.stop);
    await follow();
    effects.print(`${server.port === wanted || wanted === 0 ? "" : `Port ${wanted} is taken. `}Serving http://localhost:${server.port}/ (stop with Ctrl-C)\n`);
    await stopped(effects.stop);
    await server.close();
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  return 0;
}

/** A clock that moves once an hour: every page knows what today is, so each tick makes all pages new. */
function hourly(effects: Effects): Effects {
  const hourMs = 3_600_000;
  return { ...effects, now: () => new Date(Math.floor(effects.now().getTime() / hourMs) * hourMs) };
}

function checkedPort(text: string | undefined): number {
  const port = text === undefined ? DEFAULT_PORT : Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535 && text?.trim() !== "") return port;
  throw new ExpectedFailure(`--port expects a number from 0 to 65535, found "${text ?? ""}".`);
}

/** Says what an update came to; what was wrong last time and still is isn't said again. */
function newsReporter(effects: Effects): (update: Update) => void {
  let last = "";
  return ({ changed, problems, leftOut }) => {
    const listed = problems.length === 0 ? "" : `${formatProblems(problems, "text")}\n`;
    const said = listed + leftOut.map((line) => `Left out of the site: ${line}\n`).join("");
    if (said !== last) effects.complain(said === "" ? "No problems.\n" : said);
    last = said;
    if (effects.isTerminal && changed > 0) effects.complain(`${changed} ${changed === 1 ? "file" : "files"} written\n`);
  };
}

/** Runs `work` once more after it ends if it was asked for meanwhile; never twice at once. A bug in it is said and survived. */
function oneAtATime(work: () => Promise<void>, effects: Effects): () => Promise<void> {
  let running: Promise<void> | undefined;
  let asked = 0;
  const catchUp = async (): Promise<void> => {
    for (let done = 0; done !== asked;) {
      done = asked;
      await work().catch((error: unknown) => {
        if (!effects.stop.aborted) effects.complain(failureText(error, false));
      });
    }
    running = undefined;
  };
  return () => {
    asked += 1;
    running ??= catchUp();
    return running;
  };
}

function stopped(stop: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (stop.aborted) resolve();
    else stop.addEventListener("abort", () => resolve(), { once: true });
  });
}
