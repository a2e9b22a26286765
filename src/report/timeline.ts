import { formatNumber } from "../units/index.js";
import { isMissing } from "./known.js";
import type { Moment } from "./moments.js";
import type { Scene } from "./scene.js";
import { gapsOf, thinColumn } from "./thin-series.js";
import type { EventKind, EventReport, PhaseReport, SeriesReport, TimelineReport } from "./types.js";

/** What happened and when, for the chart and its table; undefined where the record holds nothing dated. */
export function timelineReport(scene: Scene): TimelineReport | undefined {
  const events = eventsOf(scene).sort((a, b) => a.hour - b.hour);
  const { temperature, gravity, pressure } = scene.columns;
  if (events.length < 2 && temperature === undefined && gravity === undefined) return undefined;
  const readings = handReadings(scene);
  const set = scene.batch.crash?.set?.value;
  return {
    start: scene.startText,
    events,
    phases: phasesOf(scene),
    ...(temperature === undefined ? {} : { temperature: logged("C", thinColumn(temperature)) }),
    ...(gravity === undefined ? {} : { gravity: logged("SG", thinColumn(gravity)) }),
    ...(pressure === undefined ? {} : { pressure: logged("kPa", thinColumn(pressure)) }),
    ...(readings === undefined ? {} : { gravityReadings: readings }),
    gaps: temperature === undefined ? [] : gapsOf(temperature),
    ...(set === undefined ? {} : { crashSet: set }),
    says: trendOf(scene),
    notes: notesOf(scene, events),
  };
}

function logged(unit: string, runs: SeriesReport["runs"]): SeriesReport {
  return { unit, source: "log", runs };
}

function handReadings(scene: Scene): SeriesReport | undefined {
  const points = scene.gravityPoints.flatMap((point): (readonly [number, number])[] =>
    point.source === "hand" && !isMissing(point.gravity) ? [[point.hour, point.gravity.value]] : []);
  const original = scene.batch.fermenter?.gravity === undefined ? undefined : scene.figure("original-gravity");
  const first: (readonly [number, number])[] = original === undefined || isMissing(original) ? [] : [[0, original.value]];
  return points.length + first.length === 0 ? undefined : { unit: "SG", source: "hand", runs: [[...first, ...points]] };
}

function eventsOf(scene: Scene): EventReport[] {
  const { batch } = scene;
  const event = (kind: EventKind, moment: Moment | undefined, label: string): EventReport[] =>
    moment === undefined ? [] : [{ kind, at: moment.at, hour: moment.hour, dateOnly: moment.dateOnly, label, ...(moment.hour > scene.asOfHour ? { planned: true } : {}) }];
  return [
    ...event("pitch", scene.start, batch.yeast?.pitched === undefined ? "brewed" : "pitched"),
    ...(batch.additions ?? []).flatMap((addition, index) => event("addition", scene.moment(`additions[${index}].at`, addition.at), addition.what ?? "addition")),
    ...(batch.samples ?? []).flatMap((sample, index) => event("sample", scene.moment(`samples[${index}].at`, sample.at), sample.kept === undefined ? "sample" : `sample: ${sample.kept}`)),
    ...(batch.dryHops ?? []).flatMap((hop, index) => [
      ...event("dry-hop", scene.moment(`dry_hops[${index}].added`, hop.added), `${hop.amount?.text ?? ""} ${hop.hop ?? "hops"}`.trim()),
      ...event("hops-out", scene.moment(`dry_hops[${index}].removed`, hop.removed), `${hop.hop ?? "hops"} out`),
    ]),
    ...event("crash", scene.crashStart, `crash${batch.crash?.set === undefined ? "" : ` to ${withDegreeSign(batch.crash.set.text)}`}`),
    ...(batch.dumps ?? []).flatMap((dump, index) => event("dump", scene.moment(`dumps[${index}].at`, dump.at), `dump${dump.volume === undefined ? "" : ` ${dump.volume.text}`}`)),
    ...(batch.transfer ?? []).flatMap((move, index) => event("transfer", scene.moment(`transfer[${index}].at`, move.at), "transfer")),
    ...scene.packages.flatMap(({ entry, field }) => samePlace(scene, field, entry.date) ? [] : event("package", scene.moment(`${field}.date`, entry.date), entry.into ?? "package")),
  ];
}

/** As written, with the sign that records leave out: `2 C` → `2 °C`. */
function withDegreeSign(written: string): string {
  return written.replaceAll(/(?<=\d) ?(?=[CF](?![\w°]))/gu, " °");
}

/** A package filled at the transfer is the transfer's own event. */
function samePlace(scene: Scene, field: string, date: Parameters<Scene["moment"]>[1]): boolean {
  const moment = scene.moment(`${field}.date`, date);
  return moment !== undefined && moment.dateOnly && scene.transferMoment?.at.slice(0, 10) === moment.at;
}

function phasesOf(scene: Scene): PhaseReport[] {
  const hops = scene.firstDryHop?.hour;
  const crash = scene.crashStart?.hour;
  const end = scene.transferMoment?.hour ?? scene.packagedMoment?.hour ?? scene.lastLogHour;
  if (end === undefined) return [];
  const phases: PhaseReport[] = [
    { kind: "fermentation", fromHour: 0, toHour: Math.min(hops ?? end, crash ?? end, end) },
    ...(hops === undefined ? [] : [{ kind: "dry hop" as const, fromHour: hops, toHour: Math.min(Math.max(crash ?? end, hops), end) }]),
    ...(crash === undefined ? [] : [{ kind: "crash" as const, fromHour: crash, toHour: end }]),
  ];
  return phases.filter((phase) => phase.toHour > phase.fromHour);
}

/** The chart in words: where it fermented, how gravity fell, what the cold did. */
function trendOf(scene: Scene): string {
  const said = [
    sentence(scene, ["fermentation-temperature", "fermentation-peak"], ([mean, peak]) => `Fermented at ${mean} on average, ${peak} at the warmest.`),
    sentence(scene, ["original-gravity", "final-gravity"], ([from, to]) => `Gravity fell from ${from} to ${to}.`),
    sentence(scene, ["original-gravity", "latest-gravity"], ([from, to]) => `Gravity has fallen from ${from} to ${to} so far.`),
    sentence(scene, ["dry-hop-temperature", "dry-hop-contact"], ([temperature, contact]) => `The hops were in for ${contact} at ${temperature}.`),
    sentence(scene, ["crash-temperature", "crash-hours"], ([cold, hours]) => `Cooled to ${cold} and held ${hours}.`),
  ];
  const found = said.filter((each) => each !== undefined);
  return found.length === 0 ? "The dated steps of the batch; no temperatures or gravities are logged." : found.join(" ");
}

function sentence(scene: Scene, ids: readonly string[], say: (texts: string[]) => string): string | undefined {
  const texts: string[] = [];
  for (const id of ids) {
    const result = scene.figure(id);
    if (isMissing(result)) return undefined;
    const { value, unit } = formatNumber(result.value, result.unit);
    texts.push(`${value} ${unit}`.trim());
  }
  return say(texts);
}

function notesOf(scene: Scene, events: readonly EventReport[]): string[] {
  const column = scene.columns.temperature;
  if (column === undefined) return [];
  const [first, last] = [column.series[0]?.hours ?? 0, column.series.at(-1)?.hours ?? 0];
  const outside = events.filter((event) => event.kind !== "tasting" && !event.dateOnly && !event.planned && (event.hour < first - 1 || event.hour > last + 1));
  return [
    ...overlapsOf(scene),
    ...gapsOf(column).map((gap) => `The log has no reading from ${scene.civilAtHour(gap.fromHour)} to ${scene.civilAtHour(gap.toHour)}; nothing is filled in there.`),
    ...(outside.length === 0 ? [] : [`Outside the log (${scene.civilAtHour(first)} to ${scene.civilAtHour(last)}): ${outside.map((event) => `${event.label}, ${event.at}`).join("; ")}.`]),
  ];
}

/** Stretches that two logs both cover: whose reading counts is said. */
function overlapsOf(scene: Scene): string[] {
  const spans = scene.logSpans.toSorted((a, b) => a.fromHours - b.fromHours);
  return spans.slice(1).flatMap((span, index) => {
    const until = Math.min(span.toHours, Math.max(...spans.slice(0, index + 1).map(({ toHours }) => toHours)));
    return until <= span.fromHours ? []
      : [`Two logs overlap from ${scene.civilAtHour(span.fromHours)} to ${scene.civilAtHour(until)}: readings of one time are averaged, the others taken in turn.`];
  });
}
