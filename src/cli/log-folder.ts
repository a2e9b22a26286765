import { stat } from "node:fs/promises";
import path from "node:path";
import type { Effects } from "./effects.js";
import { ExpectedFailure } from "./expected-failure.js";

/**
 * The log's folder as an absolute path.
 *
 * @param given as on the command line; without it the working folder
 * @throws ExpectedFailure when there is no such folder
 */
export async function logFolder(given: string | undefined, effects: Effects): Promise<string> {
  const folder = path.resolve(effects.workingFolder, given ?? ".");
  const found = await stat(folder).catch(() => undefined);
  if (found?.isDirectory() === true) return folder;
  throw new ExpectedFailure(found === undefined ? `There is no folder ${given ?? folder}.` : `${given ?? folder} is a file, not a folder.`, "give the folder that holds batches/");
}
