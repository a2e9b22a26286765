import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { CHART_CSS } from "../charts/index.js";
import type { SiteAsset } from "./site-file.js";

const ASSETS = new URL("./assets/", import.meta.url);
/** Read in this order: later ones may rely on what earlier ones define. */
const STYLES = ["type.css", "page.css", "batch.css", "competition.css", "season.css", "search.css", "print.css"] as const;
/** Each makes one kind of page handier; every page can be read without. */
const SCRIPTS = ["batch-list.js", "search.js", "compare.js", "copy.js", "season-explore.js"] as const;
/** The library that searches, built to be loaded as a classic script. */
const MINISEARCH = path.join(path.dirname(createRequire(import.meta.url).resolve("minisearch")), "..", "umd", "index.js");
const FACES = [
  { file: "source-serif-4-latin-400-normal.woff2", style: "normal", weight: 400 },
  { file: "source-serif-4-latin-400-italic.woff2", style: "italic", weight: 400 },
  { file: "source-serif-4-latin-600-normal.woff2", style: "normal", weight: 600 },
] as const;

/** Style, script and fonts: the same bytes for every log. */
export function siteAssets(): SiteAsset[] {
  return [
    textAsset("assets/gylebook.css", [CHART_CSS, ...STYLES.map(styleText)].join("\n")),
    textAsset("assets/fonts.css", faceStyles()),
    ...SCRIPTS.map((name) => ({ path: `assets/${name}`, bytes: bytesOf(name) })),
    { path: "assets/minisearch.js", bytes: readFileSync(MINISEARCH) },
    { path: "assets/fonts-license.txt", bytes: bytesOf("fonts/OFL.txt") },
  ];
}

/** The faces as rules of a stylesheet, the fonts in them. */
export function faceStyles(): string {
  return FACES.map(fontFace).join("\n");
}

/**
 * The faces lie inside their stylesheet: a page opened from disk may not fetch a
 * font from the folder above in every browser. "optional": a face that isn't ready
 * for the first paint isn't used on that page, so that nothing ever moves.
 */
function fontFace({ file, style, weight }: (typeof FACES)[number]): string {
  const data = Buffer.from(bytesOf(`fonts/${file}`)).toString("base64");
  return `@font-face{font-family:"Source Serif 4";font-style:${style};font-weight:${weight};font-display:optional;src:url("data:font/woff2;base64,${data}") format("woff2")}`;
}

function textAsset(path: string, text: string): SiteAsset {
  return { path, bytes: new TextEncoder().encode(text) };
}

/** The text of a stylesheet in assets/. */
export function styleText(name: string): string {
  return Buffer.from(bytesOf(name)).toString("utf8");
}

function bytesOf(name: string): Uint8Array {
  return readFileSync(new URL(name, ASSETS));
}
