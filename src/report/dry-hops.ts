import { hopValue } from "./ingredients.js";
import { beerAt } from "./flows.js";
import { missing, type Result } from "./known.js";
import type { Moment } from "./moments.js";
import { remembered } from "./remembered.js";
import type { Scene } from "./scene.js";

/** One dry-hop addition, with the beer it went into. */
export interface DryHopAddition {
  readonly field: string;
  readonly hop: string;
  readonly form: string;
  readonly held?: string;
  readonly into: "fermenter" | "keg";
  readonly purged?: boolean;
  readonly mass: Result;
  readonly alpha: Result;
  readonly oil: Result;
  /** In the vessel when they went in, L at 20 °C. */
  readonly beer: Result;
  readonly added?: Moment;
  /** Taken out, or the beer moved off them. */
  readonly out?: Moment;
}

/** The record's dry hops, each with its beer and its time in contact. */
export const dryHopsOf = remembered((scene: Scene): readonly DryHopAddition[] => {
  return (scene.batch.dryHops ?? []).map((hop, index) => {
    const field = `dry_hops[${index}]`;
    const added = scene.moment(`${field}.added`, hop.added);
    const out = scene.moment(`${field}.removed`, hop.removed) ?? (hop.into === "fermenter" ? scene.transferAfter(added) : undefined);
    return {
      field, hop: hop.hop ?? "hops", form: hop.form ?? "form not recorded", into: hop.into,
      mass: scene.mass(`${field}.amount`, hop.amount),
      alpha: hopValue(scene.log, hop.hop, "alpha", hop.alpha, `${field}.alpha`),
      oil: hopValue(scene.log, hop.hop, "oil", hop.oil, `${field}.oil`),
      beer: beerFor(scene, hop.into, added, field),
      ...(hop.held === undefined ? {} : { held: hop.held }),
      ...(hop.purged === undefined ? {} : { purged: hop.purged }),
      ...(added === undefined ? {} : { added }),
      ...(out === undefined ? {} : { out }),
    };
  });
});

function beerFor(scene: Scene, into: "fermenter" | "keg", added: Moment | undefined, field: string): Result {
  if (into === "keg") {
    const keg = scene.packages.find(({ entry }) => entry.into === "keg");
    return keg === undefined ? missing("package.volume isn't recorded for the keg the hops went into") : scene.packageVolume(keg.entry, keg.field);
  }
  return added === undefined ? missing(`${field}.added isn't recorded: the beer in the vessel then isn't known`) : beerAt(scene, added.hour);
}
