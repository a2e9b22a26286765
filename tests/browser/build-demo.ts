import { execFile } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import type { TestProject } from "vitest/node";
import { unpackBrowser } from "./browser.js";

declare module "vitest" {
  interface ProvidedContext {
    /** Absolute path of the demo site, built once for all browser tests. */
    readonly demoSite: string;
    /** A folder that holds the site some way below it, to serve it from a sub-folder. */
    readonly demoHost: string;
  }
}

const ROOT = path.resolve(import.meta.dirname, "..", "..");

/** Builds the demo with the compiled command and unpacks the browser, once for all browser tests. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const host = await mkdtemp(path.join(tmpdir(), "gylebook-demo-"));
  const site = path.join(host, "club", "beer");
  await promisify(execFile)(process.execPath, [path.join(ROOT, "dist", "cli", "main.js"), "build", ROOT, "--out", site]);
  await unpackBrowser();
  project.provide("demoSite", site);
  project.provide("demoHost", host);
  return () => rm(host, { recursive: true, force: true });
}
