import { homedir } from "node:os";
import path from "node:path";
import type { Effects } from "./effects.js";

/** The machine as it is: the one place that touches the process, its clock and its streams. */
export function machineEffects(): Effects {
  const stop = new AbortController();
  // Once: a second Ctrl-C ends the process at once, as usual.
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => stop.abort());
  const cacheHome = process.env["XDG_CACHE_HOME"] ?? "";
  return {
    workingFolder: process.cwd(),
    isTerminal: process.stdout.isTTY && process.stderr.isTTY,
    // The XDG base directory specification says to ignore a relative path there.
    cacheFolder: path.join(path.isAbsolute(cacheHome) ? cacheHome : path.join(homedir(), ".cache"), "gylebook"),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    now: () => new Date(),
    print: (text) => void process.stdout.write(text),
    complain: (text) => void process.stderr.write(text),
    stop: stop.signal,
  };
}
