import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { onTestFinished } from "vitest";
import type { Effects, ExitCode } from "../../src/cli/effects.js";
import { run } from "../../src/cli/run.js";

/** An empty folder that is removed when the test ends. */
export async function emptyFolder(): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), "gylebook-test-"));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

export interface Outcome {
  readonly exit: ExitCode;
  readonly out: string;
  readonly err: string;
}

export interface StandIn {
  readonly in?: string;
  readonly terminal?: boolean;
  readonly now?: string;
  readonly cache?: string;
  readonly stop?: AbortSignal;
  readonly onPrint?: (text: string) => void;
}

/** Runs a command line against a made-up machine, and gives what a user would see. */
export async function runCommand(words: readonly string[], given: StandIn = {}): Promise<Outcome> {
  const seen = { out: "", err: "" };
  const effects: Effects = {
    workingFolder: given.in ?? await emptyFolder(),
    isTerminal: given.terminal ?? false,
    cacheFolder: given.cache ?? path.join(await emptyFolder(), "gylebook"),
    zone: "Europe/London",
    now: () => new Date(given.now ?? "2026-06-20T11:00:00Z"),
    print: (text) => {
      seen.out += text;
      given.onPrint?.(text);
    },
    complain: (text) => {
      seen.err += text;
    },
    stop: given.stop ?? new AbortController().signal,
  };
  const exit = await run(words, effects);
  return { exit, ...seen };
}
