import { mkdir, readFile, readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, onTestFinished, test, vi } from "vitest";
import { writeSite } from "../../src/site/eleventy.js";
import { emptyFolder } from "./stand-in.js";

const page = (place: string, text: string) => ({ path: place, render: () => text });
const goTo = (folder: string): void => {
  const before = process.cwd();
  process.chdir(folder);
  onTestFinished(() => process.chdir(before));
};

describe("writing a site with Eleventy", () => {
  test("each page comes out at its path, byte for byte as rendered", async () => {
    const out = await emptyFolder();
    const texts = { "index.html": "{{ 7 * 7 }} <% x %> --- \n---\n", "batches/tp-03.json": "{}\n", "data/log.csv": "a,b\r\n1,2\r\n\r\n\r\n", "feed.xml": "<x/>" };
    await writeSite({ pages: Object.entries(texts).map(([place, text]) => page(place, text)), assets: [{ path: "assets/f.woff2", bytes: new Uint8Array([0, 255, 1]) }] }, out);
    for (const [place, text] of Object.entries(texts)) expect(await readFile(path.join(out, place), "utf8")).toBe(text);
    expect([...await readFile(path.join(out, "assets/f.woff2"))]).toEqual([0, 255, 1]);
    expect((await readdir(out, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile())).toHaveLength(5);
  });

  test("runs and reads nothing of the folder it is called in", async () => {
    const hostile = await emptyFolder();
    await mkdir(path.join(hostile, "_data"));
    await writeFile(path.join(hostile, ".eleventy.js"), "require('fs').writeFileSync('ran', '')");
    await writeFile(path.join(hostile, "eleventy.config.js"), "throw new Error('ran')");
    await writeFile(path.join(hostile, "package.json"), "{ broken");
    await writeFile(path.join(hostile, "_data", "x.js"), "throw new Error('ran')");
    await writeFile(path.join(hostile, "index.njk"), "{{ boom");
    goTo(hostile);
    const out = await emptyFolder();
    await writeSite({ pages: [page("index.html", "fine")], assets: [] }, out);
    expect(await readdir(out)).toEqual(["index.html"]);
    expect(await readdir(hostile)).not.toContain("ran");
    expect(await readdir(hostile)).not.toContain("_site");
  });

  test("works from the root of the file system", async () => {
    goTo("/");
    const out = await emptyFolder();
    await writeSite({ pages: [page("a/b.html", "fine")], assets: [] }, out);
    expect(await readFile(path.join(out, "a/b.html"), "utf8")).toBe("fine");
  });

  test("a second run in the same process writes what is new, and nothing else", async () => {
    const out = await emptyFolder();
    await writeSite({ pages: [page("a.html", "1"), page("b.html", "1")], assets: [] }, out);
    await writeSite({ pages: [page("a.html", "2")], assets: [] }, out);
    await writeSite({ pages: [], assets: [] }, out);
    expect(await readFile(path.join(out, "a.html"), "utf8")).toBe("2");
    expect(await readFile(path.join(out, "b.html"), "utf8")).toBe("1");
  });

  test("prints nothing, whatever a page throws", async () => {
    const printed: unknown[] = [];
    for (const stream of [process.stdout, process.stderr]) {
      const spy = vi.spyOn(stream, "write").mockImplementation((text) => printed.push(text) > 0);
      onTestFinished(() => spy.mockRestore());
    }
    for (const name of ["log", "warn", "error", "info"] as const) {
      const spy = vi.spyOn(console, name).mockImplementation((...words: unknown[]) => void printed.push(words));
      onTestFinished(() => spy.mockRestore());
    }
    await writeSite({ pages: Array.from({ length: 100 }, (_, number) => page(`p-${number}.html`, "x")), assets: [] }, await emptyFolder());
    const failing = { path: "a.html", render: () => Promise.reject(new Error("a bug")) };
    await expect(writeSite({ pages: [failing], assets: [] }, await emptyFolder())).rejects.toThrow("a bug");
    expect(printed).toEqual([]);
  });

  test("what a page throws comes out as it was thrown", async () => {
    const bug = new RangeError("no such figure");
    const broken = { path: "a.html", render: () => { throw bug; } };
    await expect(writeSite({ pages: [broken], assets: [] }, await emptyFolder())).rejects.toBe(bug);
  });

  test("two pages at one path are refused", async () => {
    await expect(writeSite({ pages: [page("a.html", "1"), page("a.html", "2")], assets: [] }, await emptyFolder())).rejects.toThrow(/same path/);
  });
});
