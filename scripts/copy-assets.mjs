// Puts what the compiler doesn't handle (styles, fonts, scripts for the browser) beside the compiled code,
// and makes the command executable.
import { chmod, cp, mkdir, readdir } from "node:fs/promises";
import path from "node:path";

const source = new URL("../src/", import.meta.url).pathname;
const target = new URL("../dist/", import.meta.url).pathname;

/** Folders called `assets` anywhere below src/. */
async function assetFolders(folder) {
  const entries = await readdir(folder, { withFileTypes: true });
  const below = await Promise.all(entries.filter((entry) => entry.isDirectory()).map((entry) => {
    const place = path.join(folder, entry.name);
    return entry.name === "assets" ? [place] : assetFolders(place);
  }));
  return below.flat();
}

for (const folder of await assetFolders(source)) {
  const place = path.join(target, path.relative(source, folder));
  await mkdir(place, { recursive: true });
  await cp(folder, place, { recursive: true });
}
await chmod(path.join(target, "cli", "main.js"), 0o755);
