import type { EventReport, PhaseKind, TimelineReport } from "../report/index.js";
import type { DayAxis } from "./fermentation-axis.js";
import type { Panel } from "./fermentation-panels.js";
import { placeFlags } from "./flag-labels.js";
import { plotWidthPx, type Frame } from "./frame.js";
import type { Box } from "./rule-segments.js";
import { placeSpans } from "./span-labels.js";
import { shortenText, textWidthPx } from "./text-width.js";

/** A label with the box it fills, px. */
export interface PlacedText extends Box {
  readonly text: string;
  /** Where the letters begin; the box may hold more than them. */
  readonly textLeft: number;
  readonly baseline: number;
  readonly muted: boolean;
}

export interface PlacedEvent {
  readonly event: EventReport;
  readonly x: number;
  /** Where its rule begins, px from the top. */
  readonly ruleTop: number;
}

export interface PlacedStretch {
  readonly kind: PhaseKind | "gap";
  readonly left: number;
  readonly right: number;
  /** Height of the bracket under its name. */
  readonly bracket: number;
}

export interface PlacedPanel extends Panel {
  readonly top: number;
  readonly bottom: number;
}

/** Everything of the drawing in px, from the top left of the plot. */
export interface FermentationLayout {
  readonly height: number;
  readonly xOf: (day: number) => number;
  readonly panels: readonly PlacedPanel[];
  readonly events: readonly PlacedEvent[];
  readonly stretches: readonly PlacedStretch[];
  readonly texts: readonly PlacedText[];
}

const ROW_PX = 17;
const SPAN_ROW_PX = 21;
const TITLE_PX = 27;
const PANEL_PX = { wide: { temperature: 150, gravity: 130 }, narrow: { temperature: 130, gravity: 115 } } as const;
const TOUCHING_PX = 2;
const HOURS = 24;

/** Places labels, brackets and panels one under the other. */
export function placeFermentation(timeline: TimelineReport, axis: DayAxis, panels: readonly Panel[], frame: Frame): FermentationLayout {
  const width = plotWidthPx(frame);
  const xOf = (day: number): number => (day - axis.low) / (axis.high - axis.low) * width;
  const flags = placeEvents(axis.onAxis, xOf, width);
  const spans = placeStretches(timeline, xOf, width, flags.height);
  let y = spans.bottom;
  const titles: PlacedText[] = [];
  const placed = panels.map((panel): PlacedPanel => {
    titles.push(placeText(panel.title, -frame.left, y + TITLE_PX - 9));
    const top = y + TITLE_PX;
    y = top + PANEL_PX[frame.name][panel.name];
    return { ...panel, top, bottom: y };
  });
  return { height: y, xOf, panels: placed, events: flags.events, stretches: spans.stretches, texts: [...flags.texts, ...spans.texts, ...titles] };
}

/** A label with its foot at `baseline`. */
export function placeText(text: string, left: number, baseline: number, muted = false): PlacedText {
  return { text, left, textLeft: left, right: left + textWidthPx(text), baseline, top: baseline - 12, bottom: baseline + 4, muted };
}

function placeEvents(events: readonly EventReport[], xOf: (day: number) => number, width: number): {
  readonly height: number; readonly events: readonly PlacedEvent[]; readonly texts: readonly PlacedText[];
} {
  const labels = events.map((event) => shortenText(event.planned === true ? `${event.label} (planned)` : event.label, Math.min(240, width * 0.75)));
  const places = placeFlags(events.map((event, index) => ({ x: xOf(event.hour / HOURS), widthPx: textWidthPx(labels[index] ?? "") })), width);
  const height = places.reduce((rows, place) => Math.max(rows, place.row + 1), 0) * ROW_PX;
  const texts = places.map((place, index) => placeText(labels[index] ?? "", place.left, height - place.row * ROW_PX - 5, events[index]?.planned === true));
  return {
    height, texts,
    events: events.map((event, index): PlacedEvent => {
      const x = snappedX(event, events, xOf);
      const text = texts[index];
      const beside = text === undefined || x < text.left || x > text.right;
      return { event, x, ruleTop: text === undefined ? height : beside ? text.top + 1 : text.bottom };
    }),
  };
}

/** Rules that would touch stand on the first of them. */
function snappedX(event: EventReport, events: readonly EventReport[], xOf: (day: number) => number): number {
  const x = xOf(event.hour / HOURS);
  return events.map((each) => xOf(each.hour / HOURS)).filter((other) => other <= x && x - other < TOUCHING_PX).reduce((a, b) => Math.min(a, b), x);
}

function placeStretches(timeline: TimelineReport, xOf: (day: number) => number, width: number, top: number): {
  readonly bottom: number; readonly stretches: readonly PlacedStretch[]; readonly texts: readonly PlacedText[];
} {
  const named = [
    ...timeline.phases.map((phase) => ({ ...phase, name: phase.kind })),
    ...timeline.gaps.map((gap) => ({ ...gap, kind: "gap" as const, name: "no log" })),
  ].map((each) => ({ ...each, left: xOf(each.fromHour / HOURS), right: xOf(each.toHour / HOURS) }));
  const places = placeSpans(named.map((each) => ({ from: each.left, to: each.right, widthPx: textWidthPx(each.name) })), width);
  const rowTop = (index: number): number => top + (places[index]?.row ?? 0) * SPAN_ROW_PX;
  return {
    bottom: top + places.reduce((rows, place) => Math.max(rows, place.row + 1), 0) * SPAN_ROW_PX,
    stretches: named.map(({ kind, left, right }, index) => ({ kind, left, right, bracket: rowTop(index) + 18 })),
    texts: named.map((each, index) => placeText(each.name, places[index]?.left ?? 0, rowTop(index) + 13, true)),
  };
}
