import { CHART_TOKENS } from "../../charts/index.js";
import type { BatchReport, LogReport } from "../../report/index.js";
import { contentKey } from "../content-key.js";
import { BOOK_CARD, batchCard } from "../page-paths.js";
import { printedDate } from "../text/printed-date.js";
import { wordsFor } from "../page/use-words.js";
import { clubInOneSentence } from "../views/club-sentence.js";
import { canSet, drawLine, linesOf } from "./card-text.js";

/** A picture that other sites show beside a link, not drawn yet. */
export interface SiteCard {
  /** Path in the site. */
  readonly path: string;
  /** Equal keys mean equal pictures. */
  readonly key: string;
  /** 1200 × 630 px, without text that would need a font. */
  readonly svg: () => string;
}

/** Part of every key: raise it when the cards' design changes. */
const DESIGN = "1";
const [WIDTH, HEIGHT] = [1200, 630];
const [SPINE, LEFT, TEXT_WIDTH] = [84, 148, 980];
const PAPER = "#fcfaf5";
const { "--chart-ink": INK, "--chart-muted": SOFT, "--chart-rule": RULE } = CHART_TOKENS.light;
const SAFE_COLOR = /^#[0-9a-f]{6}$/iu;

/** One card a batch and one for the book; none without an address, since other sites want a whole one. */
export function siteCards({ club, batches }: LogReport): SiteCard[] {
  if (club.url === undefined) return [];
  return [bookCard(club.name, clubInOneSentence({ club, batches }), batches), ...batches.map((batch) => batchCardOf(club, batch))];
}

function bookCard(club: string, says: string, batches: readonly BatchReport[]): SiteCard {
  const colors = [...batches].reverse().map(colorOf).filter((color) => color !== undefined);
  return { path: BOOK_CARD, key: contentKey(DESIGN, club, says, colors), svg: () => card({ over: "A gyle book", title: club, about: "", says, colors }) };
}

function batchCardOf({ name, units }: LogReport["club"], report: BatchReport): SiteCard {
  const { slug, batch, title, style, status, brewed, summary } = report;
  const about = [batch, style, `${status === "planned" ? "to be brewed" : "brewed"} ${printedDate(brewed.slice(0, 10))}`].filter((word) => word !== undefined).join(", ");
  const colors = [colorOf(report)].filter((color) => color !== undefined);
  const words = { over: name, title: canSet(title) ? title : batch, about, says: wordsFor(units, summary), colors };
  return { path: batchCard(slug), key: contentKey(DESIGN, words), svg: () => card(words) };
}

function colorOf({ swatch }: BatchReport): string | undefined {
  return swatch !== undefined && SAFE_COLOR.test(swatch.css) ? swatch.css : undefined;
}

interface CardWords {
  readonly over: string;
  readonly title: string;
  readonly about: string;
  readonly says: string;
  /** Of the beers, for the spine. */
  readonly colors: readonly string[];
}

/** A page of a book, its spine in the beer's colour: club, title, what it is, and how it turned out. */
function card({ over, title, about, says, colors }: CardWords): string {
  const long = linesOf(title, 76, TEXT_WIDTH, 9).length > 2;
  const titleSize = long ? 56 : 76;
  const titles = setLines(title, titleSize, long ? 3 : 2, 160 + titleSize / 3, INK);
  const abouts = setLines(about, 32, 1, titles.next + 4, SOFT);
  const rule = abouts.next + 2;
  const told = setLines(says, 32, Math.max(1, Math.floor((HEIGHT - 60 - rule) / 44)), rule + 52, INK);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}">`
    + `<rect width="${WIDTH}" height="${HEIGHT}" fill="${PAPER}"/>${spine(colors)}`
    + setLines(over, 30, 1, 84, SOFT).drawn + titles.drawn + abouts.drawn
    + `<rect x="${LEFT}" y="${rule}" width="${TEXT_WIDTH}" height="2" fill="${RULE}"/>${told.drawn}</svg>`;
}

function spine(colors: readonly string[]): string {
  const all = colors.length === 0 ? [RULE] : colors;
  const height = HEIGHT / all.length;
  return all.map((color, index) => `<rect y="${index * height}" width="${SPINE}" height="${height + 1}" fill="${color}"/>`).join("");
}

/** Sets a text from the base line `y` down; words that the face can't write are left out whole. */
function setLines(text: string, sizePx: number, mostLines: number, y: number, fill: string): { readonly drawn: string; readonly next: number } {
  const lines = text === "" || !canSet(text) ? [] : linesOf(text, sizePx, TEXT_WIDTH, mostLines);
  const leading = Math.round(sizePx * (sizePx > 40 ? 1.15 : 1.375));
  return { drawn: lines.map((line, index) => drawLine(line, LEFT, y + index * leading, sizePx, fill)).join(""), next: y + lines.length * leading };
}
