import { rm } from "node:fs/promises";
import path from "node:path";
import { formatProblems } from "../problems/index.js";
import { addSite } from "../site/index.js";
import { planSite } from "./build.js";
import { ExpectedFailure } from "./expected-failure.js";
import { machineEffects } from "./machine.js";
import { refuseUnsafeOutput, writeMarker } from "./output-folder.js";
import { startProgress } from "./progress.js";

type SiteConfig = Parameters<typeof addSite>[0];

/**
 * What an `.eleventy.js` exports to have plain `npx eleventy` build a log, as `gylebook build` does.
 * Unlike that it writes straight into the output folder, as Eleventy does.
 *
 * @param log absolute path of the log
 */
export function eleventyConfig(log: string): (config: SiteConfig) => Promise<void> {
  return async (config) => {
    const effects = machineEffects();
    const { problems, output } = await planSite({ log, keepGoing: false }, effects, startProgress({ ...effects, isTerminal: false }));
    if (output === undefined) throw new ExpectedFailure(`The log has errors.\n${formatProblems(problems, "text")}`);
    config.setQuietMode(true);
    addSite(config, output);
    config.on("eleventy.before", async ({ directories }) => {
      const out = path.resolve(directories.output);
      await refuseUnsafeOutput(out, log);
      // Pages of removed records would stay.
      await rm(out, { recursive: true, force: true });
      await writeMarker(out);
    });
  };
}
