import { type ComponentChildren, createElement, Fragment, type FunctionComponent, type VNode } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { htmlText } from "../../src/site/page/html-text.js";

/** An element whose attributes needn't be known to JSX. */
const h = (type: string | FunctionComponent<never>, props: object | null, ...children: ComponentChildren[]): VNode =>
  createElement(type as FunctionComponent<object>, props, ...children);

const Said = ({ words }: { readonly words: string }): VNode => h("q", null, words);

/** Preact's own renderer, an outside judge of what JSX means; it ends elements without content as XML does. */
const byPreact = (node: VNode): string => `<!DOCTYPE html>\n${renderToString(node).replaceAll("/>", ">")}\n`;

describe("a document", () => {
  it.each<[string, VNode]>([
    ["text with signs of markup", h("p", null, '<b> & "c" \' > é ×')],
    ["numbers, and what isn't shown", h("p", null, 0, 1.5, null, undefined, true, false, "")],
    ["lists, lists of lists and fragments", h("ul", null, [h("li", null, "a"), [h("li", null, "b")]], h(Fragment, null, "c", h("li", null, "d")))],
    ["components, one within another", h("div", null, h(Said, { words: "<a>" }), h(Fragment, null, h(Said, { words: "b" })))],
    ["attributes: text, numbers, true, false, nothing", h("a", { href: '?a="b"&c=<d>', tabindex: -1, hidden: true, download: false, title: "", lang: undefined, class: "x" }, "y")],
    ["what aria says in yes and no", h("p", { "aria-hidden": true, "aria-expanded": false, "aria-label": undefined }, "y")],
    ["elements without content", h("p", null, h("br", null), h("img", { src: "a.jpg", alt: "" }), h("hr", { class: "x" }))],
    ["elements that happen to be empty", h("p", null, h("span", null), h("script", { src: "a.js" }))],
    ["drawings", h("svg", { viewBox: "0 0 1 1", focusable: "false" }, h("path", { d: "M0 0L1 1" }))],
    ["markup that is put in as it is", h("div", { class: "x", dangerouslySetInnerHTML: { __html: "<i>a & b</i>" } })],
  ])("reads as JSX says: %s", (_what, node) => {
    expect(htmlText(node)).toBe(byPreact(node));
  });
});
