import { readdir, writeFile } from "node:fs/promises";
import path from "node:path";
import sharp, { type Sharp } from "sharp";
import { describe, expect, test } from "vitest";
import { preparePhoto } from "../../src/cli/photos.js";
import { emptyFolder } from "./stand-in.js";

const plainPicture = (width: number, height: number): Sharp => sharp({ create: { width, height, channels: 3, background: "#aa7722" } });

describe("a photo for the site", () => {
  test("is at most 1200 px, keeps its shape, and loses where and with what it was taken", async () => {
    const original = await plainPicture(2400, 1600)
      .withExif({ IFD0: { Make: "CameraMaker", Copyright: "someone" }, IFD3: { GPSLatitudeRef: "N", GPSLatitude: "51/1 30/1 0/1" } })
      .jpeg().toBuffer();
    expect((await sharp(original).metadata()).exif).toBeDefined();
    const photo = await preparePhoto(original, await emptyFolder());
    expect(photo).toMatchObject({ width: 1200, height: 800 });
    const { exif, icc, iptc, xmp, format } = await sharp(photo?.bytes).metadata();
    expect({ exif, icc, iptc, xmp, format }).toEqual({ exif: undefined, icc: undefined, iptc: undefined, xmp: undefined, format: "jpeg" });
    expect(Buffer.from(photo?.bytes ?? []).includes("CameraMaker")).toBe(false);
  });

  test("taken with the camera on its side is turned upright, since the note of it is dropped", async () => {
    const original = await plainPicture(400, 200).withExif({ IFD0: { Orientation: "6" } }).withMetadata({ orientation: 6 }).jpeg().toBuffer();
    expect(await preparePhoto(original, await emptyFolder())).toMatchObject({ width: 200, height: 400 });
  });

  test("is never made larger than it was", async () => {
    expect(await preparePhoto(await plainPicture(30, 20).png().toBuffer(), await emptyFolder())).toMatchObject({ width: 30, height: 20 });
  });

  test.each(["png", "webp", "gif", "avif"] as const)("may be %s", async (format) => {
    const photo = await preparePhoto(await plainPicture(40, 40).toFormat(format).toBuffer(), await emptyFolder());
    expect(photo).toMatchObject({ width: 40, height: 40 });
    expect(photo?.path).toMatch(/^photos\/[0-9a-f]{20}\.jpg$/);
  });

  test("comes out byte for byte the same with and without its cache entry, and with a damaged one", async () => {
    const original = await plainPicture(900, 500).png().toBuffer();
    const cache = await emptyFolder();
    const [cold, warm] = [await preparePhoto(original, cache), await preparePhoto(original, cache)];
    expect(warm).toEqual(cold);
    const [entry = ""] = await readdir(cache);
    await writeFile(path.join(cache, entry), "damaged");
    const mended = await preparePhoto(original, cache);
    expect(Buffer.from(mended?.bytes ?? [])).toEqual(Buffer.from(cold?.bytes ?? []));
    expect(await preparePhoto(original, path.join(cache, entry, "not-a-folder"))).toMatchObject({ path: cold?.path });
  });

  test.each([
    ["a drawing that could hold script", Buffer.from("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>")],
    ["text with a photo's name", Buffer.from("hello")],
    ["a cut-off JPEG", Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16])],
    ["nothing", Buffer.alloc(0)],
  ])("%s is refused, not thrown", async (_what, bytes) => {
    expect(await preparePhoto(bytes, await emptyFolder())).toBeUndefined();
  });

  test("that unpacks to more than 100 megapixels is refused", async () => {
    const bomb = await sharp({ create: { width: 12_000, height: 9_000, channels: 3, background: "#000" } }).png().toBuffer();
    expect(bomb.length).toBeLessThan(1_000_000);
    expect(await preparePhoto(bomb, await emptyFolder())).toBeUndefined();
  });

  test("of 40 megapixels is taken and made small", async () => {
    const large = await sharp({ create: { width: 8_000, height: 5_000, channels: 3, background: "#aa7722" } }).jpeg().toBuffer();
    expect(await preparePhoto(large, await emptyFolder())).toMatchObject({ width: 1200, height: 750 });
  });
});
