import { writeSite } from "../site/index.js";
import type { PlannedOutput } from "./build.js";
import { contentHash } from "./built-before.js";
import { replaceFolder } from "./output-folder.js";
import type { Progress } from "./progress.js";

/**
 * Writes a planned site in the place of what is in `out`.
 *
 * @param out absolute path
 * @returns path in the site → hash of the file's content
 */
export async function writeWhole({ pages, assets }: PlannedOutput, out: string, progress: Progress): Promise<Record<string, string>> {
  const hashes: Record<string, string> = Object.fromEntries(assets.map(({ path: place, bytes }) => [place, contentHash(bytes)]));
  let begun = 0;
  const watched = pages.map(({ path: place, render }) => ({
    path: place,
    render: async () => {
      begun += 1;
      progress.say(`Writing the site: file ${begun} of ${pages.length}`);
      const text = await render();
      hashes[place] = contentHash(text);
      return text;
    },
  }));
  await replaceFolder(out, (fresh) => writeSite({ pages: watched, assets }, fresh));
  return hashes;
}
