import type { VNode } from "preact";
import { renderToString } from "preact-render-to-string";

/** A void element as the renderer ends it; attribute values may hold a ">". */
const SELF_CLOSED = /<(meta|link|img|br|hr|input|col|wbr)((?:\s+[^\s"'<>/=]+(?:="[^"]*")?)*)\s*\/>/gu;

/** A whole document as HTML text: void elements end as HTML ends them. */
export function htmlText(document: VNode): string {
  return `<!DOCTYPE html>\n${renderToString(document).replaceAll(SELF_CLOSED, "<$1$2>")}\n`;
}
