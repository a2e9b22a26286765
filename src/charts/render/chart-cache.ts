import { createHash } from "node:crypto";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Chart } from "../chart.js";

/** Part of every key, so that a change of renderer draws everything anew. */
export const RENDERER = "2; vega 6.4.0; vega-lite 6.4.3";

const ELEMENTS = /^(?:svg|title|desc|g|path|text)$/;
const FORBIDDEN = /\s(?:on\w*|style|href|xlink:href|src)\s*=|url\(/i;

/** The name of a chart's drawing in the cache: a hash of all that it is drawn from. */
export function cacheKey(chart: Chart, prefix: string): string {
  const { id, title, description, wide, narrow } = chart;
  return createHash("sha256").update(JSON.stringify([RENDERER, prefix, id, title, description, wide, narrow])).digest("hex").slice(0, 40);
}

/** The drawing kept under a key; undefined where there is none, or something else. */
export async function loadDrawing(folder: string, key: string): Promise<string | undefined> {
  const text = await readFile(join(folder, `${key}.svg`), "utf8").catch(() => undefined);
  return text !== undefined && isDrawing(text) ? text : undefined;
}

/** Keeps a drawing; a build interrupted meanwhile leaves no half of it. */
export async function writeDrawing(folder: string, key: string, markup: string): Promise<void> {
  const file = join(folder, `${key}.svg`);
  const draft = `${file}.${process.pid}`;
  await mkdir(folder, { recursive: true });
  await writeFile(draft, markup);
  await rename(draft, file);
}

/** A cache is a folder that others may write to: what it holds goes onto a page only if a drawing could look like that. */
function isDrawing(text: string): boolean {
  const tags = text.match(/<[^>]*>/g) ?? [];
  return text.startsWith("<svg class=\"chart ") && text.endsWith("</svg>")
    && tags.every((tag) => ELEMENTS.test(/^<\/?([\w:-]*)/.exec(tag)?.[1] ?? "") && !FORBIDDEN.test(tag));
}
