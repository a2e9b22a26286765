import { compactPath } from "./path-data.js";

/** A shape of a drawing in absolute px; `ink` is how it is drawn, as attributes in a fixed order. */
export interface Shape {
  readonly kind: "path" | "text";
  readonly ink: string;
  /** Path data, or where the text stands and the text itself. */
  readonly data: string;
}

const TAG = /<(\/?)([a-z]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>([^<]*)/gi;
const ATTRIBUTE = /([\w:-]+)="([^"]*)"/g;
const TRANSLATE = /^translate\(([-\d.e]+),([-\d.e]+)\)\s*/;
/** Attributes that say how a shape is drawn; all others are Vega's own book-keeping. */
const INKS = ["text-anchor", "font-size", "font-weight", "fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-linecap", "stroke-linejoin"];
const DEFAULTS: Readonly<Record<string, string>> = { "text-anchor": "start", "stroke-width": "1", "fill-opacity": "1", "font-weight": "normal" };

interface Offset {
  readonly dx: number;
  readonly dy: number;
}

/**
 * Reads a drawing as Vega prints it into a flat list of shapes in the order they are drawn: groups are
 * resolved into positions, frames without ink are dropped.
 *
 * @param typeSize the size every text has unless it says otherwise, as printed: "13px"
 */
export function readShapes(svg: string, typeSize: string): readonly Shape[] {
  const shapes: Shape[] = [];
  const offsets: Offset[] = [{ dx: 0, dy: 0 }];
  for (const [, closing, name = "", attributes = "", selfClosing, text = ""] of svg.matchAll(TAG)) {
    if (closing === "/") {
      if (name === "g") offsets.pop();
      continue;
    }
    const found = new Map([...attributes.matchAll(ATTRIBUTE)].map(([, key = "", value = ""]) => [key, value] as const));
    const at = offsets[offsets.length - 1] ?? { dx: 0, dy: 0 };
    if (name === "g") {
      if (selfClosing !== "/") offsets.push(movedBy(at, found.get("transform")));
    } else {
      const shape = shapeOf(name, found, at, text, typeSize);
      if (shape !== undefined) shapes.push(shape);
    }
  }
  return shapes;
}

function movedBy(at: Offset, transform: string | undefined): Offset {
  const [, x = "0", y = "0"] = TRANSLATE.exec(transform ?? "") ?? [];
  return { dx: at.dx + Number(x), dy: at.dy + Number(y) };
}

function shapeOf(name: string, attributes: ReadonlyMap<string, string>, parent: Offset, text: string, typeSize: string): Shape | undefined {
  const at = movedBy(parent, attributes.get("transform"));
  const ink = inkOf(attributes, typeSize);
  const value = (key: string): number => Number(attributes.get(key) ?? 0);
  if (name === "line") return { kind: "path", ink, data: compactPath(`M0,0L${value("x2")},${value("y2")}`, at.dx, at.dy) };
  if (name === "text") return text === "" ? undefined : { kind: "text", ink, data: `<text x="${round(at.dx)}" y="${round(at.dy)}">${text}</text>` };
  const hasInk = attributes.has("stroke") || (attributes.get("fill") ?? "none") !== "none";
  const data = attributes.get("d") ?? "";
  if (name !== "path" || !hasInk || data === "" || attributes.get("display") === "none") return undefined;
  return { kind: "path", ink, data: compactPath(data, at.dx, at.dy) };
}

function inkOf(attributes: ReadonlyMap<string, string>, typeSize: string): string {
  return INKS.map((name) => [name, attributes.get(name)] as const)
    .filter(([name, value]) => value !== undefined && value !== DEFAULTS[name] && !(name === "font-size" && value === typeSize))
    .map(([name, value]) => ` ${name}="${value}"`).join("");
}

function round(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}
