import { readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, test, vi } from "vitest";
import { drawCards } from "../../src/cli/site-cards.js";
import { emptyFolder } from "./stand-in.js";

const svg = (fill: string): string => `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="630" viewBox="0 0 1200 630"><rect width="1200" height="630" fill="${fill}"/></svg>`;

describe("a social card", () => {
  test("is a picture of 1200 × 630 px, as sites that show links ask for", async () => {
    const [card] = await drawCards([{ path: "cards/a.png", key: "a 1200", svg: () => svg("#cc8800") }], await emptyFolder());
    expect(await sharp(card?.bytes).metadata()).toMatchObject({ format: "png", width: 1200, height: 630 });
  });

  test("that is kept whole isn't drawn again, and one that is damaged is", async () => {
    const cache = await emptyFolder();
    const [first] = await drawCards([{ path: "cards/b.png", key: "b", svg: () => svg("#112233") }], cache);
    const [entry = ""] = await readdir(cache);
    expect(entry).toMatch(/\.png$/u);
    await writeFile(path.join(cache, entry), Buffer.from(first?.bytes ?? []).subarray(0, 100));
    // As a new process would meet it: nothing is remembered.
    vi.resetModules();
    const { drawCards: again } = await import("../../src/cli/site-cards.js");
    const [mended] = await again([{ path: "cards/b.png", key: "b", svg: () => svg("#112233") }], cache);
    expect(Buffer.from(mended?.bytes ?? []).equals(Buffer.from(first?.bytes ?? []))).toBe(true);
    const [kept] = await again([{ path: "cards/c.png", key: "b", svg: () => { throw new Error("drawn again"); } }], cache);
    expect(kept?.path).toBe("cards/c.png");
  });
});
