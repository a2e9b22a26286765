import { access, writeFile } from "node:fs/promises";
import path from "node:path";
import type { PrivateFile } from "../site/index.js";
import { ExpectedFailure } from "./expected-failure.js";
import { type Marker, MARKER, realFolder, refuseUnsafeOutput, replaceFolder } from "./output-folder.js";

/** Marks a folder of private sheets. Another name than a site's, so that neither is ever taken for the other. */
export const PRIVATE_MARKER: Marker = {
  name: "not-for-publication.txt",
  text: "Written by gylebook sheets: codes and keys that must not be published. The next run replaces this folder whole: keep nothing of your own in it.\n",
};

/**
 * Refuses a folder where private sheets would be published, or would replace what isn't theirs: any
 * folder in or below a built site, one that holds the log, and the folders of the log that are read.
 *
 * @param place absolute path of the folder to be written
 * @param log absolute path of the log
 * @throws ExpectedFailure
 */
export async function refuseUnsafePlace(place: string, log: string): Promise<void> {
  const site = await siteAround(await realFolder(place));
  if (site !== undefined) throw new ExpectedFailure(`${place} lies in a built site (${site}), and these sheets must not be published.`, "give another folder with --out");
  await refuseUnsafeOutput(place, log, PRIVATE_MARKER);
}

/** The built site that a folder is or lies in. */
async function siteAround(folder: string): Promise<string | undefined> {
  if (await access(path.join(folder, MARKER)).then(() => true, () => false)) return folder;
  const parent = path.dirname(folder);
  return parent === folder ? undefined : siteAround(parent);
}

/** Writes all sheets in the place of what is in `place`, or none. */
export async function writePrivate(place: string, files: readonly PrivateFile[]): Promise<void> {
  await replaceFolder(place, async (fresh) => {
    for (const file of files) await writeFile(path.join(fresh, file.path), file.render(), { flag: "wx" });
  }, PRIVATE_MARKER);
}
