import { type FunctionComponent, isValidElement, type VNode } from "preact";
import { leavePage } from "./page-context.js";

/**
 * A whole document as HTML text: every component is called once, from the outside in, and knows its props
 * and the page it stands on. Text and attributes are escaped.
 *
 * Preact's own renderer does more, for pages that live on in a browser, and takes twice as long.
 */
export function htmlText(document: VNode): string {
  try {
    const html = `${withNode("<!DOCTYPE html>\n", document)}\n`;
    // A text that grew piece by piece is kept in pieces until someone looks into it: better now than
    // when thousands of pages are waiting to be written.
    void html.indexOf("\0");
    return html;
  } finally {
    leavePage();
  }
}

/** Elements that have no content and no end tag. Source: HTML Standard, 13.1.2, void elements. */
const VOID: ReadonlySet<string> = new Set(["area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"]);

// Each of these puts something at the end of one growing text: strings made apart and put together
// later would be strings of strings of strings, and slow to take apart.

function withNode(html: string, node: unknown): string {
  if (typeof node === "string") return html + escaped(node);
  if (typeof node === "number") return html + String(node);
  if (Array.isArray(node)) return node.reduce<string>(withNode, html);
  return isValidElement(node) ? withElement(html, node) : html;
}

function withElement(html: string, { type, props }: VNode<ElementProps>): string {
  // Classes aren't used here, so what isn't the name of an element is a function.
  if (typeof type !== "string") return withNode(html, (type as FunctionComponent<object>)(props));
  const opened = `${withAttributes(`${html}<${type}`, props)}>`;
  if (VOID.has(type)) return opened;
  const { children, dangerouslySetInnerHTML: raw } = props;
  return `${raw === undefined ? withNode(opened, children) : opened + raw.__html}</${type}>`;
}

interface ElementProps {
  readonly children?: unknown;
  readonly dangerouslySetInnerHTML?: { readonly __html: string };
  readonly [attribute: string]: unknown;
}

/** What is false is left out, except of aria-…, where false says something; what is true needs no value. */
function withAttributes(html: string, props: ElementProps): string {
  let all = html;
  for (const name in props) {
    if (name === "children" || name === "dangerouslySetInnerHTML") continue;
    const given = props[name];
    const value = typeof given === "boolean" && name.startsWith("aria-") ? String(given) : given;
    if (value === true || value === "") all += ` ${name}`;
    else if (typeof value === "string" || typeof value === "number") all += ` ${name}="${escaped(String(value))}"`;
  }
  return all;
}

const ENTITIES: Readonly<Record<string, string>> = { '"': "&quot;", "&": "&amp;", "<": "&lt;" };

function escaped(text: string): string {
  return /["&<]/.test(text) ? text.replaceAll(/["&<]/g, (letter) => ENTITIES[letter] ?? letter) : text;
}
