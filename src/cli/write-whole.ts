import { writeSite } from "../site/index.js";
import type { PlannedOutput } from "./build.js";
import { hashesOf } from "./built-before.js";
import { replaceFolder } from "./output-folder.js";
import type { Progress } from "./progress.js";

/**
 * Writes a planned site in the place of what is in `out`.
 *
 * @param out absolute path
 * @returns path in the site → hash of the file's content
 */
export async function writeWhole({ pages, assets }: PlannedOutput, out: string, progress: Progress): Promise<Record<string, string>> {
  let begun = 0;
  const watched = pages.map(({ path: place, render }) => ({
    path: place,
    render: () => {
      begun += 1;
      progress.say(`Writing the site: file ${begun} of ${pages.length}`);
      return render();
    },
  }));
  await replaceFolder(out, (fresh) => writeSite({ pages: watched, assets }, fresh));
  return hashesOf(out);
}
