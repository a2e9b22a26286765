import { volumeDifference } from "../science/index.js";
import { apply, isMissing, missing, plusMinusOf, withNote, type Result } from "./known.js";
import { totalOf } from "./known-lists.js";
import { earliestHour, latestHour, type Moment } from "./moments.js";
import { remembered } from "./remembered.js";
import type { Scene } from "./scene.js";

/** One recorded movement of beer, at 20 °C. */
export interface Flow {
  /** The reading it rests on: `samples[0].volume`. */
  readonly field: string;
  readonly volume: Result;
  readonly moment?: Moment;
  readonly what: string;
}

export interface Flows {
  readonly additions: readonly Flow[];
  readonly samples: readonly Flow[];
  readonly dumps: readonly Flow[];
  readonly transferred: readonly Flow[];
  readonly left: readonly Flow[];
  readonly packaged: readonly Flow[];
}

/** Every recorded movement of beer, in the order the record gives them. */
export const flowsOf = remembered((scene: Scene): Flows => {
  const { batch, moves, packages } = scene;
  return {
    additions: addedVolumes(scene),
    samples: (batch.samples ?? []).map((sample, index) => flow(scene, `samples[${index}]`, sample.volume, sample.at, sample.kept ?? sample.at?.text ?? "sample"))
      .filter((sample) => !isDrawnFromPackage(scene, sample)),
    dumps: (batch.dumps ?? []).map((dump, index) => flow(scene, `dumps[${index}]`, dump.volume, dump.at, dump.at?.text ?? "dump")),
    transferred: moves.map(({ entry, field }) => flow(scene, field, entry.volume, entry.at, entry.at?.text ?? "transfer")),
    left: moves.filter(({ entry }, index, all) => entry.left !== undefined || index === all.length - 1)
      .map(({ entry, field }) => flow(scene, field, entry.left, entry.at, "in the vessel", "left")),
    packaged: packages.map(({ entry, field }) => flow(scene, field, entry.volume, entry.date, packageName(entry.into, entry.count))),
  };
});

type Written = Parameters<Scene["volume"]>[1];
type When = Parameters<Scene["moment"]>[1];

function flow(scene: Scene, field: string, volume: Written, at: When, what: string, key = "volume"): Flow {
  const moment = scene.moment(field, at);
  return { field: `${field}.${key}`, what, volume: scene.volume(`${field}.${key}`, volume), ...(moment === undefined ? {} : { moment }) };
}

/** A sample surely taken after the last move (or the packaging) is beer that the package already counts. */
function isDrawnFromPackage(scene: Scene, { moment: drawn }: Flow): boolean {
  const emptied = scene.isMoved ? scene.moves.map(({ entry, field }) => scene.moment(field, entry.at)) : scene.packages.map(({ entry, field }) => scene.moment(field, entry.date));
  if (drawn === undefined || emptied.length === 0) return false;
  return emptied.every((each) => each !== undefined && earliestHour(drawn) > latestHour(each));
}

/** A volume added later counts whole; a mass adds next to nothing unless the record says how much. */
function addedVolumes(scene: Scene): Flow[] {
  return (scene.batch.additions ?? []).flatMap((addition, index) => {
    const field = `additions[${index}]`;
    const what = addition.what ?? "addition";
    if (addition.volume !== undefined) return [flow(scene, field, addition.volume, addition.at, what)];
    return addition.amount?.kind === "volume" ? [flow(scene, field, addition.amount, addition.at, what, "amount")] : [];
  });
}

function packageName(into: string | undefined, count: number | undefined): string {
  const kind = into ?? "package";
  return count === undefined || count === 1 ? kind : `${count} ${kind === "keg" || kind === "cask" ? `${kind}s` : kind}`;
}

/** Beer in the fermenter at an hour: what went in, less samples and dumps by then, plus later additions. */
export function beerAt(scene: Scene, hour: number): Result {
  const flows = flowsOf(scene);
  const by = (list: readonly Flow[]): Result[] =>
    list.filter((each) => each.moment === undefined || each.moment.hour <= hour).map((each) => each.volume);
  const added = totalOf([scene.fermenterVolume, ...by(flows.additions)], "L");
  const drawn = [...by(flows.samples), ...by(flows.dumps)];
  return drawn.length === 0 ? added : apply(volumeDifference, added, totalOf(drawn, "L"));
}

/** All packages together; missing, with every reason, when one isn't recorded. */
export function packagedTotal(scene: Scene): Result {
  if (scene.packages.length === 0) return missing("package isn't recorded");
  return totalOf(flowsOf(scene).packaged.map((each) => each.volume), "L");
}

/** Fermenter volume and later additions. */
export function volumeInto(scene: Scene): Result {
  const added = flowsOf(scene).additions.map((each) => each.volume);
  return added.length === 0 ? scene.fermenterVolume : totalOf([scene.fermenterVolume, ...added], "L");
}

/**
 * What left the fermenter. Moves that together hold more than went in followed each other
 * (to a second vessel, then to the keg): the last one counts.
 */
export function transferredTotal(scene: Scene): Result {
  if (!scene.isMoved) return missing(scene.batch.transfer === undefined ? "transfer isn't recorded" : "nothing was transferred");
  const { transferred } = flowsOf(scene);
  const sum = totalOf(transferred.map((each) => each.volume), "L");
  const into = volumeInto(scene);
  if (transferred.length < 2 || isMissing(sum) || isMissing(into) || sum.value <= into.value + (plusMinusOf(into) ?? 0)) return sum;
  const last = transferred.toSorted((a, b) => (a.moment?.hour ?? 0) - (b.moment?.hour ?? 0)).at(-1);
  return last === undefined ? sum : withNote(last.volume, "The moves hold more than went in, so they followed each other: the last one counts.");
}
