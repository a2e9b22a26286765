import MarkdownIt, { type RendererRule, type Token } from "markdown-it";
import type { PhotoView } from "../site-inputs.js";

/** What notes may show and link to; all else in them is text. */
export interface NotesSurroundings {
  /** The heading the notes stand under: their own begin one level below. */
  readonly under: number;
  /** A photo beside the record by the name the notes use for it; undefined when there is none. */
  readonly photo: (name: string) => PhotoView | undefined;
  /** The link to a file of this site that a relative link in the notes means; undefined when there is none. */
  readonly page: (href: string) => string | undefined;
  /** Link from the page to a path inside the site. */
  readonly link: (path: string) => string;
}

const DEEPEST_HEADING = 6;
const OUTSIDE = /^(?:https?:\/\/|mailto:)[^\s\\]+$/iu;

/**
 * Markdown of a record to HTML. The text is a stranger's: no raw HTML, no
 * scheme but http, https and mailto, no picture but the record's own photos,
 * and nothing in it reaches a template.
 */
export function renderMarkdown(text: string, around: NotesSurroundings): string {
  const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
  // Every link is parsed, so that one which may not stay leaves its words; `settleLink` decides.
  markdown.validateLink = () => true;
  markdown.core.ruler.push("stranger_links", (state) => settleBlocks(state.tokens, around));
  markdown.core.ruler.push("headings_below", (state) => lowerHeadings(state.tokens, around.under));
  markdown.renderer.rules["image"] = imageRule(around);
  markdown.renderer.rules["table_open"] = () => '<div class="scroll" role="group" tabindex="0" aria-label="A table in the notes"><table>';
  markdown.renderer.rules["table_close"] = () => "</table></div>";
  return markdown.render(text.replaceAll(/[ \t]+$/gmu, ""));
}

function settleBlocks(tokens: Token[], around: NotesSurroundings): void {
  for (const token of tokens) {
    if (token.children !== null) token.children = settleLinks(token.children, around);
    if (token.type === "th_open") token.attrs = [["scope", "col"]];
    if (token.type === "td_open") token.attrs = null;
    if (token.type === "fence" || token.type === "code_block") token.attrSet("tabindex", "0");
  }
}

/** Keeps links that lead somewhere safe; of the others keeps the words. */
function settleLinks(children: readonly Token[], around: NotesSurroundings): Token[] {
  const kept: Token[] = [];
  const open: boolean[] = [];
  for (const token of children) {
    if (token.type === "link_open") open.push(settleLink(token, around));
    const drop = token.type === "link_open" || token.type === "link_close" ? !(open.at(-1) ?? false) : false;
    if (token.type === "link_close") open.pop();
    if (!drop) kept.push(token);
  }
  return withoutEmptyLinks(kept);
}

function settleLink(token: Token, around: NotesSurroundings): boolean {
  const href = String(token.attrGet("href") ?? "");
  const settled = OUTSIDE.test(href) ? href : around.page(href);
  if (settled === undefined) return false;
  token.attrs = [["href", settled], ...(OUTSIDE.test(href) ? [["rel", "noopener nofollow ugc"] as [string, string]] : [])];
  return true;
}

/** A link without words can't be read out or clicked: it goes. */
function withoutEmptyLinks(tokens: readonly Token[]): Token[] {
  return tokens.filter((token, index) => {
    if (token.type === "link_open") return tokens[index + 1]?.type !== "link_close";
    return token.type !== "link_close" || tokens[index - 1]?.type !== "link_open";
  });
}

/** Headings start below the page's own and skip no level, whatever the notes use. */
function lowerHeadings(tokens: Token[], under: number): void {
  let last = under;
  let tag = "";
  for (const token of tokens) {
    if (token.type === "heading_open") {
      last = Math.min(Number(token.tag.slice(1)) + under, last + 1, DEEPEST_HEADING);
      tag = `h${last}`;
    }
    if (token.type === "heading_open" || token.type === "heading_close") token.tag = tag;
  }
  dropEmptyHeadings(tokens);
}

function dropEmptyHeadings(tokens: Token[]): void {
  for (let index = tokens.length - 1; index >= 0; index -= 1) {
    if (tokens[index]?.type === "heading_open" && tokens[index + 1]?.content.trim() === "") tokens.splice(index, 3);
  }
}

function imageRule(around: NotesSurroundings): RendererRule {
  return (tokens, index) => {
    const token = tokens[index];
    const alt = plainText(token?.children ?? []);
    const photo = around.photo(decoded(String(token?.attrGet("src") ?? "")));
    if (photo === undefined) return alt === "" ? "" : `<span class="no-photo">[${escaped(alt)}]</span>`;
    return `<img src="${escaped(around.link(photo.path))}" alt="${escaped(alt)}" width="${photo.width}" height="${photo.height}" loading="lazy">`;
  };
}

function plainText(tokens: readonly Token[]): string {
  return tokens.map((token) => (token.children === null ? token.content : plainText(token.children))).join("").trim();
}

function decoded(source: string): string {
  try {
    return decodeURIComponent(source);
  } catch {
    return source; // a stray percent sign: the name is taken as written
  }
}

function escaped(text: string): string {
  return new MarkdownIt().utils.escapeHtml(text);
}
