import { TYPE_PX } from "../theme.js";
import { compactLine, compactPath, type LinePoint } from "./path-data.js";
import { escapeText } from "./svg-text.js";

/** A shape of a drawing in absolute px; `ink` is how it is drawn, as attributes in a fixed order. */
export interface Shape {
  readonly kind: "path" | "text";
  readonly ink: string;
  /** Path data, or where the text stands and the text itself. */
  readonly data: string;
}

/** What a drawing of Vega's consists of, as far as it is read here; Vega's types leave it out. */
export interface SceneItem extends LinePoint {
  readonly mark: Scene;
  /** Of an axis's part: where along the axis it stands, from 0 to 1. */
  readonly datum?: { readonly index?: number };
  /** In a group: the marks in it. */
  readonly items?: readonly Scene[];
  readonly x2?: number;
  readonly y2?: number;
  readonly text?: string | number;
  readonly fontSize?: number;
  readonly fontWeight?: string | number;
  readonly fill?: string;
  readonly fillOpacity?: number;
  readonly stroke?: string;
  readonly strokeWidth?: number;
  readonly strokeDash?: readonly number[];
  readonly strokeCap?: string;
  readonly strokeJoin?: string;
}

export interface Scene {
  readonly marktype: string;
  /** "axis-label" */
  readonly role?: string;
  readonly items: readonly SceneItem[];
}

/** Vega's own drawing of marks, missing from its types as well. */
export interface SceneTools {
  /** By mark type: `attr` gives the SVG attributes of an item that depend on its geometry. */
  readonly Marks: Readonly<Record<string, { readonly nested: boolean; readonly attr: (emit: (name: string, value: string) => void, item: SceneItem) => void }>>;
  /** Calls for every item in the order they are drawn. */
  readonly sceneVisit: (scene: { readonly items?: readonly unknown[] }, visitor: (each: never) => void) => void;
}

const TRANSLATE = /^translate\(([-\d.e]+),([-\d.e]+)\)/;

/** Reads what Vega has drawn into a flat list of shapes in the order they are drawn: groups are resolved into positions. */
export function readScene(scene: Scene, dx: number, dy: number, tools: SceneTools): readonly Shape[] {
  const shapes: Shape[] = [];
  const read = (mark: Scene, left: number, top: number): void => {
    if (mark.marktype === "group") {
      tools.sceneVisit(mark, (group: SceneItem) => {
        tools.sceneVisit(group, (inner: Scene) => read(inner, left + (group.x ?? 0), top + (group.y ?? 0)));
      });
    } else if (tools.Marks[mark.marktype]?.nested === true) {
      // A line is one shape of all its items.
      if (mark.items[0] !== undefined) add(mark.items[0], left, top);
    } else if (mark.role?.startsWith("axis-") === true) {
      for (const item of inAxisOrder(mark.items)) add(item, left, top);
    } else {
      tools.sceneVisit(mark, (item: SceneItem) => add(item, left, top));
    }
  };
  const add = (item: SceneItem, left: number, top: number): void => {
    const shape = item.mark.marktype === "text" ? textOf(item, left, top, tools) : pathOf(item, left, top, tools);
    if (shape !== undefined) shapes.push(shape);
  };
  read(scene, dx, dy);
  return shapes;
}

/** A view keeps what an axis marks from one drawing to the next, where both mark the same value, and adds the rest after it. */
function inAxisOrder(items: readonly SceneItem[]): readonly SceneItem[] {
  return [...items].sort((a, b) => (a.datum?.index ?? 0) - (b.datum?.index ?? 0));
}

function textOf(item: SceneItem, left: number, top: number, tools: SceneTools): Shape | undefined {
  const text = String(item.text ?? "").trim();
  if (text === "") return undefined;
  const found = geometryOf(item, tools);
  const [, x = "0", y = "0"] = TRANSLATE.exec(found["transform"] ?? "") ?? [];
  return {
    kind: "text", ink: inkOf(item, found["text-anchor"]),
    data: `<text x="${round(left + Number(x))}" y="${round(top + Number(y))}">${escapeText(text)}</text>`,
  };
}

function pathOf(item: SceneItem, left: number, top: number, tools: SceneTools): Shape | undefined {
  if (isClear(item.fill) && isClear(item.stroke)) return undefined;
  const { marktype } = item.mark;
  const { x = 0, y = 0 } = item;
  if (marktype === "rule") return { kind: "path", ink: inkOf(item), data: compactLine([item, { x: item.x2 ?? x, y: item.y2 ?? y }], left, top) };
  if (marktype === "line") return { kind: "path", ink: inkOf(item), data: compactLine(item.mark.items, left, top) };
  const data = geometryOf(item, tools)["d"] ?? "";
  // A symbol is drawn around its own place, all else from the group's corner.
  const isSymbol = marktype === "symbol";
  return data === "" ? undefined : { kind: "path", ink: inkOf(item), data: compactPath(data, left + (isSymbol ? x : 0), top + (isSymbol ? y : 0)) };
}

function geometryOf(item: SceneItem, tools: SceneTools): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  tools.Marks[item.mark.marktype]?.attr((name, value) => { found[name] = value; }, item);
  return found;
}

/** SVG has no transparent ink: it leaves it out. */
function isClear(ink: string | undefined | null): boolean {
  return ink === undefined || ink === null || ink === "transparent";
}

/** How an item is drawn, without what is so anyway. */
function inkOf(item: SceneItem, anchor = "start"): string {
  const isText = item.mark.marktype === "text";
  return attribute("text-anchor", anchor, "start")
    + (isText ? attribute("font-size", item.fontSize, TYPE_PX) + attribute("font-weight", item.fontWeight, "normal") : "")
    + attribute("fill", item.fill, "transparent") + attribute("fill-opacity", item.fillOpacity, 1)
    + attribute("stroke", item.stroke, "transparent") + attribute("stroke-width", item.strokeWidth, 1)
    + attribute("stroke-dasharray", item.strokeDash?.join(), "") + attribute("stroke-linecap", item.strokeCap, "")
    + attribute("stroke-linejoin", item.strokeJoin, "");
}

function attribute(name: string, value: string | number | undefined | null, usual: string | number): string {
  return value === undefined || value === null || value === usual ? "" : ` ${name}="${value}"`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}
