import { plotWidthPx, type Frame } from "./frame.js";
import type { DayAxis } from "./fermentation-axis.js";
import { placeText, type FermentationLayout, type PlacedPanel, type PlacedText } from "./fermentation-layout.js";
import { hatchBox } from "./hatch.js";
import { labelRows } from "./label-layers.js";
import type { Row, SpecContent } from "./layered-spec.js";
import { cutRule } from "./rule-segments.js";
import { shortenText, textWidthPx } from "./text-width.js";

const HATCH_PX = 8;
/** How dark each phase is shaded; a crash lies within the dry hop and shows through it. */
const SHADES = { fermentation: 0.45, "dry hop": 0.85, crash: 0.9, gap: 0 } as const;

/** The layout as data sets and params: x in days, y in px. */
export function fermentationContent(layout: FermentationLayout, axis: DayAxis, frame: Frame, start: string): SpecContent {
  const width = plotWidthPx(frame);
  const setLabel = setPointText(layout);
  const texts = [...layout.texts, ...setLabel, ...keyTexts(layout, width), ...footTexts(layout, axis, frame, start)];
  const panels = layout.panels.map((panel) => panelContent(panel));
  return {
    datasets: {
      shades: layout.stretches.filter((each) => each.kind !== "gap")
        .map((each) => ({ x: each.left, x2: each.right, y: each.bracket, y2: layout.height, opacity: SHADES[each.kind] })),
      hatches: hatchRows(layout),
      brackets: layout.stretches.flatMap((each) => bracketRows(each.left, each.right, each.bracket)),
      rules: eventRows(layout, texts, false),
      plannedRules: eventRows(layout, texts, true),
      setPoint: setPointRows(layout, width),
      keys: keyPanels(layout).map((panel) => ({ x: width - textWidthPx(KEY) - 9, y: panel.top - 13 })),
      labels: labelRows(texts.map((each) => ({ x: each.textLeft, y: each.baseline, text: each.text, muted: each.muted }))),
      ...Object.assign({}, ...panels.map((panel) => panel.datasets)) as SpecContent["datasets"],
    },
    params: { dayLow: axis.low, dayHigh: axis.high, dayTicks: axis.ticks, ...Object.assign({}, ...panels.map((panel) => panel.params)) as SpecContent["params"] },
  };
}

function panelContent(panel: PlacedPanel): SpecContent {
  const { name, scale } = panel;
  return {
    datasets: { [`${name}Line`]: panel.line, [`${name}ByHand`]: panel.byHand },
    params: {
      [`${name}Low`]: scale.low, [`${name}High`]: scale.high, [`${name}Ticks`]: scale.ticks, [`${name}Top`]: panel.top, [`${name}Bottom`]: panel.bottom,
    },
  };
}

function bracketRows(x: number, x2: number, y: number): readonly Row[] {
  return [{ x, x2, y, y2: y }, { x, x2: x, y, y2: y + 4 }, { x: x2, x2, y, y2: y + 4 }];
}

function hatchRows(layout: FermentationLayout): readonly Row[] {
  return layout.stretches.filter((each) => each.kind === "gap")
    .flatMap((gap) => layout.panels.flatMap((panel) => hatchBox({ left: gap.left, right: gap.right, top: panel.top, bottom: panel.bottom }, HATCH_PX)));
}

function eventRows(layout: FermentationLayout, texts: readonly PlacedText[], planned: boolean): readonly Row[] {
  const tops = new Map<number, number>();
  for (const { event, x, ruleTop } of layout.events) {
    if ((event.planned === true) === planned) tops.set(x, Math.min(ruleTop, tops.get(x) ?? Infinity));
  }
  return [...tops].flatMap(([x, top]) => cutRule(x, top, layout.height, texts).map(([y, y2]) => ({ x, x2: x, y, y2 })));
}

/** Where the crash begins, px; undefined where nothing says so. */
function crashX(layout: FermentationLayout): number | undefined {
  return layout.events.find(({ event }) => event.kind === "crash")?.x;
}

function setPointRows(layout: FermentationLayout, width: number): readonly Row[] {
  const y = setPointY(layout);
  const x = crashX(layout);
  return y === undefined || x === undefined ? [] : [{ x, x2: width, y, y2: y }];
}

function setPointY(layout: FermentationLayout): number | undefined {
  const panel = layout.panels.find((each) => each.name === "temperature");
  if (panel?.setPoint === undefined) return undefined;
  return panel.bottom - (panel.setPoint - panel.scale.low) / (panel.scale.high - panel.scale.low) * (panel.bottom - panel.top);
}

function setPointText(layout: FermentationLayout): readonly PlacedText[] {
  const y = setPointY(layout);
  const x = crashX(layout);
  if (y === undefined || x === undefined) return [];
  return [placeText("set point", Math.max(0, x - textWidthPx("set point") - 5), y + 4, true)];
}

const KEY = "by hand";

/** Panels whose open circles need saying what they are, at the right end of the title. */
function keyPanels(layout: FermentationLayout): readonly PlacedPanel[] {
  return layout.panels.filter((panel) => panel.byHand.length > 0);
}

function keyTexts(layout: FermentationLayout, width: number): readonly PlacedText[] {
  return keyPanels(layout).map((panel) => {
    const text = placeText(KEY, width - textWidthPx(KEY), panel.top - 9, true);
    return { ...text, left: text.left - 16, textLeft: text.left };
  });
}

/** Under the axis: which day is day 0, and what comes later than the axis shows. */
function footTexts(layout: FermentationLayout, axis: DayAxis, frame: Frame, start: string): readonly PlacedText[] {
  const width = plotWidthPx(frame);
  const dayZero = `day 0: ${frame.name === "wide" ? start : start.slice(0, 10)}`;
  const later = axis.later.map((event) => `${event.label}, day ${Math.round(event.hour / 24)}`).join("; ");
  const line = (text: string, baseline: number): PlacedText => placeText(text, width - textWidthPx(text), baseline, true);
  return [
    line(dayZero, layout.height + 40),
    ...(later === "" ? [] : [line(shortenText(`later: ${later}`, width), layout.height + 58)]),
  ];
}
