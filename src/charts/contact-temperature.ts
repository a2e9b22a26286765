import type { DryHopReport } from "../report/index.js";
import type { Chart, ChartOptions, Drawing } from "./chart.js";
import { displayUnit, type DisplayUnit } from "./display-unit.js";
import { labelLayer, labelRows } from "./label-layers.js";
import { layeredSpec } from "./layered-spec.js";
import { axisTitle, quantityX, scaleParams } from "./quantity-axis.js";
import { circleLayer, spanLayer } from "./quantity-layers.js";
import { placeRows } from "./row-layout.js";
import { COLOURS } from "./theme.js";
import { computeScale } from "./ticks.js";

/** A dry hop whose temperature in contact is known, in the unit that is drawn. */
interface Contact {
  readonly name: string;
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  readonly value: string;
}

/**
 * How warm the beer was while the hops were in it: the mean as a point, lowest to highest as a line, a row an addition.
 *
 * @returns undefined where the log says nothing about any addition
 */
export function chartContactTemperature(dryHops: readonly DryHopReport[], options: ChartOptions & { readonly batch: string }): Chart | undefined {
  const unit = displayUnit("C", options.system);
  const contacts = dryHops.flatMap((dryHop) => contactOf(dryHop, unit, displayUnit("g", options.system)));
  if (contacts.length === 0) return undefined;
  const ranges = contacts.map(({ name, value }) => `${name}: ${value} ${unit.label}`).join("; ");
  return {
    id: options.id ?? "contact-temperature", kind: "contact-temperature", title: `Temperature in contact with the hops, ${options.batch}`,
    description: `Mean, and lowest to highest, while the hops were in the beer. ${ranges}.`,
    table: { columns: [{ title: "addition" }, { title: "mean (lowest to highest)", unit: unit.label }], rows: contacts.map(({ name, value }) => [name, value]) },
    get wide() { return drawContacts(contacts, unit, "wide"); },
    get narrow() { return drawContacts(contacts, unit, "narrow"); },
  };
}

function contactOf(dryHop: DryHopReport, unit: DisplayUnit, mass: DisplayUnit): readonly Contact[] {
  const { temperatureMean: mean, temperatureLow: low = mean, temperatureHigh: high = mean } = dryHop;
  if (mean === undefined || low === undefined || high === undefined) return [];
  const value = `${unit.formatValue(mean)} (${unit.formatValue(low)} to ${unit.formatValue(high)})`;
  return [{ name: dryHop.grams === undefined ? dryHop.hop : `${mass.format(dryHop.grams)} ${dryHop.hop}`, mean: unit.convert(mean), low: unit.convert(low), high: unit.convert(high), value }];
}

function drawContacts(contacts: readonly Contact[], unit: DisplayUnit, name: "wide" | "narrow"): Drawing {
  const layout = placeRows(contacts.map((contact) => ({ name: contact.name, value: contact.value })), name);
  const scale = computeScale(contacts.flatMap(({ low, high }) => [low, high]), name === "wide" ? 6 : 4, { smallestStep: 0.5, smallestRange: 5 });
  const placed = contacts.map((contact, index) => ({ ...contact, y: layout.middles[index] ?? 0 }));
  const axis = quantityX("from", axisTitle("Temperature", unit.label), { decimals: scale.decimals, hasGrid: !layout.isStacked });
  const spec = layeredSpec(layout.frame, layout.height, {
    params: scaleParams(scale),
    datasets: {
      ranges: placed.map(({ low, high, y }) => ({ from: low, to: high, y })),
      points: placed.map(({ mean, y }) => ({ x: mean, y })),
      labels: labelRows(layout.labels),
    },
  }, [spanLayer("ranges", { width: 1.4, axis }), circleLayer("points", { ink: COLOURS.first }), labelLayer("labels")]);
  return { spec, width: layout.frame.width, height: layout.height + layout.frame.top + layout.frame.bottom };
}
