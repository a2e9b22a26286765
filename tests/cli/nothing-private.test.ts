import { mkdir, readFile, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { emptyFolder, runCommand } from "./stand-in.js";

/** Words that only the batch that isn't published holds. */
const SECRET = ["QP-07", "qp-07", "Moonless", "moonbrewer", "moonseason", "moonseries", "moonshadow"];

test("a batch that isn't published is in no file of the site: page, search, feed, site map, card, calendar or data", async () => {
  const log = await emptyFolder();
  await mkdir(path.join(log, "batches"));
  await mkdir(path.join(log, "shared"));
  await writeFile(path.join(log, "shared", "club.yaml"), "name: Saltings\nurl: https://example.org/x/\n");
  await writeFile(path.join(log, "batches", "shown.md"), "---\ntitle: Shown\nbatch: P-1\nbrewed: 2026-03-01\n---\nNotes.\n");
  await writeFile(path.join(log, "batches", "hidden.md"), "---\ntitle: Moonless\nbatch: QP-07\nbrewed: 2026-03-02\nbrewer: moonbrewer\nseason: moonseason\nseries: moonseries\npublish: false\nplan: {dates: {dry_hop: 2026-07-01 19:00}}\n---\nmoonshadow notes\n");
  const site = path.join(await emptyFolder(), "site");
  const { exit, err } = await runCommand(["build", log, "--out", site, "--as-of", "2026-06-20T12:00"]);
  expect(err).toBe("");
  expect(exit).toBe(0);
  const files = (await readdir(site, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
  for (const name of ["search-data.js", "feed.xml", "sitemap.xml", "cards/p-1.png"]) expect(files).toContain(path.join(site, name));
  for (const file of files) {
    for (const word of SECRET) {
      expect(path.relative(site, file), word).not.toContain(word);
      expect((await readFile(file)).includes(word), `${path.relative(site, file)} holds ${word}`).toBe(false);
    }
  }
});
