import type { TimelineReport } from "../report/index.js";
import { wordsInUnits, type UnitSystem } from "../units/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { buildDayAxis } from "./fermentation-axis.js";
import { fermentationContent } from "./fermentation-marks.js";
import { fermentationLayers } from "./fermentation-layers.js";
import { placeFermentation } from "./fermentation-layout.js";
import { buildPanels, panelNames } from "./fermentation-panels.js";
import { fermentationTable } from "./fermentation-table.js";
import { NARROW_PX, plotWidthPx, WIDE_PX, type Frame } from "./frame.js";
import { layeredSpec } from "./layered-spec.js";

const WIDE: Frame = { name: "wide", width: WIDE_PX, left: 46, right: 12, top: 4, bottom: 48 };
const NARROW: Frame = { name: "narrow", width: NARROW_PX, left: 43, right: 8, top: 4, bottom: 48 };
/** A second line under the axis for what comes later than it shows. */
const LATER_PX = 18;

/**
 * What happened: temperature and gravity in two panels over one axis of days, phases shaded and named,
 * a rule and a label for every event, readings by hand as circles, and no line where there is no log.
 *
 * @returns undefined where neither temperature nor gravity was read
 */
export function chartFermentation(read: TimelineReport, options: ChartOptions & { readonly batch: string }): Chart | undefined {
  const timeline = labelledIn(read, options.system);
  const names = panelNames(timeline).join(" and ");
  if (names === "") return undefined;
  return {
    id: options.id ?? "fermentation", kind: "fermentation", title: `${names.charAt(0).toUpperCase()}${names.slice(1)}, ${options.batch}`,
    description: timeline.says, table: fermentationTable(timeline, buildDayAxis(timeline, 1), options.system),
    get wide() { return drawFermentation(timeline, WIDE, options); },
    get narrow() { return drawFermentation(timeline, NARROW, options); },
  };
}

/** Events with their amounts in the units drawn: a label has room for one system. */
function labelledIn(timeline: TimelineReport, system: UnitSystem = "metric"): TimelineReport {
  return { ...timeline, events: timeline.events.map((event) => ({ ...event, label: wordsInUnits(event.label, system, true) })) };
}

function drawFermentation(timeline: TimelineReport, outline: Frame, options: ChartOptions): Drawing {
  const isWide = outline.name === "wide";
  const axis = buildDayAxis(timeline, isWide ? 12 : 6);
  const columnHours = (axis.high - axis.low) * 24 / plotWidthPx(outline);
  const panels = buildPanels(timeline, columnHours, isWide ? 5 : 4, options.system);
  const frame = axis.later.length === 0 ? outline : { ...outline, bottom: outline.bottom + LATER_PX };
  const layout = placeFermentation(timeline, axis, panels, frame);
  const content = fermentationContent(layout, axis, frame, timeline.start);
  const spec = layeredSpec(frame, layout.height, content, fermentationLayers(layout.panels, axis.title));
  return { spec, width: frame.width, height: layout.height + frame.top + frame.bottom };
}
