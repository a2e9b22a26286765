import { execFile } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import type { TestProject } from "vitest/node";
import { unpackBrowser } from "./browser.js";

declare module "vitest" {
  interface ProvidedContext {
    /** Absolute path of the demo site, built once for all browser tests, with nothing in the cache. */
    readonly demoSite: string;
    /** A folder that holds the site some way below it, to serve it from a sub-folder. */
    readonly demoHost: string;
    /** Where and with which cache it was built. */
    readonly demoPlace: Place;
  }
}

/** A machine's time zone and language, and the folder of its caches. */
export interface Place { readonly zone: string; readonly locale: string; readonly cache: string }

export const ROOT = path.resolve(import.meta.dirname, "..", "..");

export const placeVariables = ({ zone, locale, cache }: Place): NodeJS.ProcessEnv => ({ ...process.env, TZ: zone, LANG: locale, LC_ALL: locale, XDG_CACHE_HOME: cache });

/** Builds the demo with the compiled command, as if at that place. */
export async function buildDemo(place: Place, out: string): Promise<void> {
  await promisify(execFile)(process.execPath, [path.join(ROOT, "dist", "cli", "main.js"), "build", ROOT, "--out", out], { env: placeVariables(place) });
}

/** Builds the demo and unpacks the browser, once for all browser tests. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(path.join(tmpdir(), "gylebook-demo-"));
  const host = path.join(folder, "host");
  const site = path.join(host, "club", "beer");
  const place = { zone: "Pacific/Auckland", locale: "de_DE.UTF-8", cache: path.join(folder, "cache") };
  await Promise.all([buildDemo(place, site), unpackBrowser()]);
  project.provide("demoSite", site);
  project.provide("demoHost", host);
  project.provide("demoPlace", place);
  return () => rm(folder, { recursive: true, force: true });
}
