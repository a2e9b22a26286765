import { plotWidthPx, NARROW_PX, WIDE_PX, type Frame } from "./frame.js";
import type { Label } from "./label-layers.js";
import { shortenText, textWidthPx } from "./text-width.js";

/** One line of a chart that reads like a table: a name, a mark, a value. */
export interface RowText {
  readonly name: string;
  readonly value: string;
  readonly muted?: boolean;
}

/** Rows in place: names and values in columns beside the marks, or above them where the drawing is too narrow for that. */
export interface RowLayout {
  readonly frame: Frame;
  readonly height: number;
  /** Where the marks of each row are centred, px. */
  readonly middles: readonly number[];
  readonly labels: readonly Label[];
  /** Names stand above their marks instead of beside them. */
  readonly isStacked: boolean;
}

/** Under the plot: an axis with its title. */
const AXIS_PX = 44;
const ROW_PX = 22;
const STACKED_ROW_PX = 36;
const COLUMN_GAP = 10;
/** Marks need at least this much room beside the columns, or they go under their names. */
const LEAST_PLOT_PX = { wide: 300, narrow: 150 } as const;
const EDGE_PX = 8;

/** @param headPx room above the first row, for labels of the chart's own */
export function placeRows(rows: readonly RowText[], name: Frame["name"], headPx = 0): RowLayout {
  const width = name === "wide" ? WIDE_PX : NARROW_PX;
  const names = Math.max(0, ...rows.map((row) => textWidthPx(row.name)));
  const values = Math.max(0, ...rows.map((row) => textWidthPx(row.value)));
  const left = Math.ceil(names + COLUMN_GAP);
  const right = Math.ceil(values + COLUMN_GAP);
  const isStacked = width - left - right < LEAST_PLOT_PX[name];
  const frame: Frame = { name, width, top: 4, bottom: AXIS_PX, left: isStacked ? EDGE_PX : left, right: isStacked ? EDGE_PX : right };
  return isStacked ? stackedRows(rows, frame, headPx) : columnRows(rows, frame, headPx);
}

function columnRows(rows: readonly RowText[], frame: Frame, headPx: number): RowLayout {
  const middles = rows.map((_, index) => headPx + (index + 0.5) * ROW_PX);
  const labels = rows.flatMap((row, index): Label[] => {
    const y = (middles[index] ?? 0) + 4;
    const muted = row.muted === true;
    return [
      { x: -frame.left, y, text: row.name, muted },
      { x: plotWidthPx(frame) + frame.right, y, text: row.value, align: "right", muted },
    ];
  });
  return { frame, middles, labels, height: headPx + rows.length * ROW_PX + 4, isStacked: false };
}

function stackedRows(rows: readonly RowText[], frame: Frame, headPx: number): RowLayout {
  const width = plotWidthPx(frame);
  const labels = rows.flatMap((row, index): Label[] => {
    const y = headPx + index * STACKED_ROW_PX + 13;
    const muted = row.muted === true;
    const room = width - textWidthPx(row.value) - COLUMN_GAP;
    return [{ x: 0, y, text: shortenText(row.name, room), muted }, { x: width, y, text: row.value, align: "right", muted }];
  });
  const middles = rows.map((_, index) => headPx + index * STACKED_ROW_PX + 25);
  return { frame, middles, labels, height: headPx + rows.length * STACKED_ROW_PX + 4, isStacked: true };
}
