import { volumeDifference } from "../science/index.js";
import { apply, missing, type Result } from "./known.js";
import { totalOf } from "./known-lists.js";
import type { Moment } from "./moments.js";
import { remembered } from "./remembered.js";
import type { Scene } from "./scene.js";

/** One recorded movement of beer, at 20 °C. */
export interface Flow {
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
  const { batch } = scene;
  return {
    additions: addedVolumes(scene),
    samples: (batch.samples ?? []).map((sample, index) => flow(scene, `samples[${index}]`, sample.volume, sample.at, sample.kept ?? sample.at?.text ?? "sample")),
    dumps: (batch.dumps ?? []).map((dump, index) => flow(scene, `dumps[${index}]`, dump.volume, dump.at, dump.at?.text ?? "dump")),
    transferred: (batch.transfer ?? []).map((move, index) => flow(scene, `transfer[${index}]`, move.volume, move.at, move.at?.text ?? "transfer")),
    left: (batch.transfer ?? []).filter((move, index, all) => move.left !== undefined || index === all.length - 1)
      .map((move) => leftFlow(scene, move, batch.transfer?.indexOf(move) ?? 0)),
    packaged: scene.packages.map(({ entry, field }) => flow(scene, field, entry.volume, entry.date, packageName(entry.into, entry.count))),
  };
});

type Written = Parameters<Scene["volume"]>[1];
type When = Parameters<Scene["moment"]>[1];

function flow(scene: Scene, field: string, volume: Written, at: When, what: string): Flow {
  const moment = scene.moment(`${field}.at`, at);
  return { field, what, volume: scene.volume(`${field}.volume`, volume), ...(moment === undefined ? {} : { moment }) };
}

function leftFlow(scene: Scene, move: { readonly left?: Written; readonly at?: When }, index: number): Flow {
  const field = `transfer[${index}]`;
  const moment = scene.moment(`${field}.at`, move.at);
  return { field, what: "in the vessel", volume: scene.volume(`${field}.left`, move.left), ...(moment === undefined ? {} : { moment }) };
}

/** A volume added later counts whole; a mass adds next to nothing unless the record says how much. */
function addedVolumes(scene: Scene): Flow[] {
  return (scene.batch.additions ?? []).flatMap((addition, index) => {
    const field = `additions[${index}]`;
    const volume = addition.volume ?? (addition.amount?.kind === "volume" ? addition.amount : undefined);
    return volume === undefined ? [] : [flow(scene, field, volume, addition.at, addition.what ?? "addition")];
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

/** All moves out of the fermenter together. */
export function transferredTotal(scene: Scene): Result {
  return scene.batch.transfer === undefined ? missing("transfer isn't recorded") : totalOf(flowsOf(scene).transferred.map((each) => each.volume), "L");
}
