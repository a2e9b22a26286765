import { readFileSync } from "node:fs";
import { CHART_CSS } from "../charts/index.js";
import type { SiteAsset } from "./site-file.js";

const ASSETS = new URL("./assets/", import.meta.url);
/** Read in this order: later ones may rely on what earlier ones define. */
const STYLES = ["type.css", "page.css", "batch.css", "competition.css", "season.css", "print.css"] as const;
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
    { path: "assets/batch-list.js", bytes: bytesOf("batch-list.js") },
    { path: "assets/season-explore.js", bytes: bytesOf("season-explore.js") },
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
