import { CHART_FONT, TYPE_PX } from "../theme.js";
import type { Shape } from "./scene-shapes.js";
import { escapeText } from "./svg-text.js";

/** What a drawing is called, for those who hear it. */
export interface Naming {
  /** Begins every id in the drawing; unique on a page. */
  readonly idPrefix: string;
  readonly className: string;
  readonly title: string;
  readonly description: string;
}

/** The shapes of a drawing → inline SVG that is named, scales with its column and is as short as it can be. */
export function printSvg(shapes: readonly Shape[], size: { readonly width: number; readonly height: number }, naming: Naming): string {
  const id = naming.idPrefix;
  return `<svg class="chart ${naming.className}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-labelledby="${id}-title ${id}-desc"`
    + ` fill="none" font-family="${CHART_FONT}" font-size="${TYPE_PX}">`
    + `<title id="${id}-title">${escapeText(naming.title)}</title><desc id="${id}-desc">${escapeText(naming.description)}</desc>`
    + `${printShapes(shapes)}</svg>`;
}

/** Neighbours drawn alike are printed together. */
function printShapes(shapes: readonly Shape[]): string {
  let text = "";
  for (let from = 0; from < shapes.length;) {
    const first = shapes[from];
    if (first === undefined) break;
    let to = from + 1;
    while (shapes[to]?.kind === first.kind && shapes[to]?.ink === first.ink) to += 1;
    const data = shapes.slice(from, to).map((shape) => shape.data).join("");
    text += first.kind === "path" ? `<path${first.ink} d="${data}"/>` : `<g${first.ink}>${data}</g>`;
    from = to;
  }
  return text;
}
