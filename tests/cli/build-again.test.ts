import { mkdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { type Outcome, type StandIn, emptyFolder, runCommand } from "./stand-in.js";

const record = (title: string): string => `---\ntitle: ${title}\nbatch: P-1\nbrewed: 2026-03-01\n---\nNotes.\n`;

interface Place { readonly log: string; readonly site: string; readonly build: (given?: StandIn, ...words: readonly string[]) => Promise<Outcome> }

async function place(): Promise<Place> {
  const folder = await emptyFolder();
  const [log, site, cache] = [path.join(folder, "log"), path.join(folder, "site"), path.join(folder, "cache")];
  await mkdir(path.join(log, "batches"), { recursive: true });
  await writeFile(path.join(log, "batches", "p-1.md"), record("First"));
  return { log, site, build: (given = {}, ...words) => runCommand(["build", log, "--out", site, ...words], { cache, terminal: true, ...given }) };
}

/** Whether the site was made anew: the folder is another one then. */
async function isAnew(site: string, build: () => Promise<Outcome>): Promise<boolean> {
  const before = await stat(site);
  expect((await build()).exit).toBe(0);
  return (await stat(site)).ino !== before.ino;
}

describe("building again", () => {
  test("when nothing changed leaves the site alone and says so", async () => {
    const { site, build } = await place();
    expect((await build()).err).toMatch(/Wrote \d+ files to /);
    expect(await isAnew(site, build)).toBe(false);
    expect((await build()).err).toContain("Nothing changed since ");
  });

  test("says the same of the log as the first time", async () => {
    const { log, build } = await place();
    await mkdir(path.join(log, "batches", "no-record"));
    await writeFile(path.join(log, "batches", "no-record", "notes.txt"), "x");
    const [first, second] = [await build({ terminal: false }), await build({ terminal: false })];
    expect(first.err).toContain("[log/folder-without-record]");
    expect(second).toEqual(first);
  });

  test.each([
    ["a record was saved", async ({ log }: Place) => writeFile(path.join(log, "batches", "p-1.md"), record("Second"))],
    ["a file was added", async ({ log }: Place) => writeFile(path.join(log, "batches", "p-2.md"), record("Other").replace("P-1", "P-2"))],
    ["a file of the site was changed", async ({ site }: Place) => writeFile(path.join(site, "index.html"), "changed")],
    ["a file of the site was removed", async ({ site }: Place) => rm(path.join(site, "batches", "p-1.html"))],
    ["a file was added to the site", async ({ site }: Place) => writeFile(path.join(site, "more.html"), "more")],
    ["the site is gone but for its mark", async ({ site }: Place) => { await rm(site, { recursive: true }); await mkdir(site); }],
  ])("makes it anew when %s", async (_what, change) => {
    const it = await place();
    await it.build();
    await change(it);
    expect(await isAnew(it.site, it.build)).toBe(true);
    expect(await readFile(path.join(it.site, "batches", "p-1.html"), "utf8")).toContain("P-1");
    expect(await isAnew(it.site, it.build)).toBe(false);
  });

  test("makes it anew when the clock went on, but not where the log or an option says what today is", async () => {
    const { log, site, build } = await place();
    await build({ now: "2026-06-20T11:00:00Z" });
    expect(await isAnew(site, () => build({ now: "2026-06-20T11:00:59Z" }))).toBe(false);
    expect(await isAnew(site, () => build({ now: "2026-06-20T11:01:00Z" }))).toBe(true);
    expect(await isAnew(site, () => build({}, "--as-of", "2026-06-20T13:00"))).toBe(true);
    expect(await isAnew(site, () => build({ now: "2027-01-01T00:00:00Z" }, "--as-of", "2026-06-20T13:00"))).toBe(false);
    await mkdir(path.join(log, "shared"));
    await writeFile(path.join(log, "shared", "club.yaml"), "as_of: 2026-06-20 12:00\n");
    expect(await isAnew(site, build)).toBe(true);
    expect(await isAnew(site, () => build({ now: "2027-01-01T00:00:00Z" }))).toBe(false);
  });

  test("--cold makes it anew, to the same bytes", async () => {
    const { site, build } = await place();
    await build({}, "--as-of", "2026-06-20");
    const before = await readFile(path.join(site, "batches", "p-1.html"));
    expect(await isAnew(site, () => build({}, "--as-of", "2026-06-20", "--cold"))).toBe(true);
    expect(await readFile(path.join(site, "batches", "p-1.html"))).toEqual(before);
  });

  test("shows how far it is on a terminal only", async () => {
    const { build } = await place();
    const watched = await build();
    expect(watched.err).toContain("Reading the log …");
    expect(watched.err).toMatch(/Writing the site: file 1 of \d+ …/);
    const { build: again } = await place();
    expect(await again({ terminal: false })).toEqual({ exit: 0, out: "", err: "" });
  });
});
