import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import path from "node:path";
import type { SiteAsset, SiteCard } from "../site/index.js";
import { writeCacheEntry } from "./cache-entry.js";

/** What was drawn before in this process, by the card's key. */
const drawn = new Map<string, Promise<Uint8Array>>();
/** So many are drawn at once: each waits for a thread of its own. */
const AT_ONCE = 4;

/** Draws the cards that other sites show beside a link, as PNG. The same card gives the same bytes; they are kept in `cacheFolder`. */
export async function drawCards(cards: readonly SiteCard[], cacheFolder: string): Promise<SiteAsset[]> {
  const assets: SiteAsset[] = [];
  for (let from = 0; from < cards.length; from += AT_ONCE) {
    assets.push(...await Promise.all(cards.slice(from, from + AT_ONCE).map(async (card) => ({ path: card.path, bytes: await drawnOnce(card, cacheFolder) }))));
  }
  return assets;
}

function drawnOnce(card: SiteCard, cacheFolder: string): Promise<Uint8Array> {
  const known = drawn.get(card.key) ?? draw(card, cacheFolder);
  drawn.set(card.key, known);
  return known;
}

/** Packing them smaller takes three times as long as drawing them. */
async function draw({ key, svg }: SiteCard, cacheFolder: string): Promise<Uint8Array> {
  const { default: sharp } = await import("sharp");
  const name = createHash("sha256").update(`${key} ${JSON.stringify(sharp.versions)}`).digest("hex").slice(0, 20);
  const cached = path.join(cacheFolder, `${name}.png`);
  const isWhole = (bytes: Uint8Array): boolean => Buffer.from(bytes.subarray(-8)).toString("latin1").startsWith("IEND");
  const before = await readFile(cached).catch(() => undefined);
  if (before !== undefined && isWhole(before)) return before;
  const bytes = await sharp(Buffer.from(svg())).png({ compressionLevel: 6 }).toBuffer();
  await writeCacheEntry(cached, bytes);
  return bytes;
}
