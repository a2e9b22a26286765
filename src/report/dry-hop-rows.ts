import { seriesExtremes } from "../science/index.js";
import { hoursOutside, temperatureBand } from "./checks/dry-hop.js";
import { dryHopsOf, type DryHopAddition } from "./dry-hops.js";
import { contactOf, contactTemperature, doseOf } from "./figures/dry-hop.js";
import { isMissing, type Result } from "./known.js";
import type { Scene } from "./scene.js";
import { slugOf } from "../records/index.js";
import type { DryHopReport } from "./types.js";

/** One row a dry-hop addition, with what the log shows of its contact. */
export function dryHopReports(scene: Scene): DryHopReport[] {
  const band = temperatureBand(scene);
  return dryHopsOf(scene).map((addition) => {
    const reasons = new Set<string>();
    const value = (key: keyof DryHopReport, result: Result): Partial<DryHopReport> => {
      if (!isMissing(result)) return { [key]: result.value };
      reasons.add(result.missing);
      return {};
    };
    const outside = hoursOutside(scene, addition, band);
    return {
      ...described(addition),
      ...value("grams", addition.mass),
      ...value("contactDays", contactOf(scene, addition)),
      ...value("temperatureMean", contactTemperature(scene, addition)),
      ...extremes(scene, addition),
      ...(isMissing(outside) ? {} : { hoursOutside: outside.value }),
      ...value("dose", doseOf(addition)),
      notes: [...reasons],
    };
  });
}

function described(addition: DryHopAddition): Omit<DryHopReport, "notes"> {
  const { hop, form, held, into, alpha, oil, added, out, purged } = addition;
  return {
    hop, slug: slugOf(hop), form, into,
    ...(held === undefined ? {} : { held }),
    ...(isMissing(alpha) ? {} : { alpha: alpha.value }),
    ...(isMissing(oil) ? {} : { oil: oil.value }),
    added: added?.at ?? "time not recorded",
    ...(out === undefined ? {} : { out: out.at }),
    ...(purged === undefined ? {} : { purged }),
  };
}

function extremes(scene: Scene, addition: DryHopAddition): Partial<DryHopReport> {
  if (addition.into === "keg" || addition.added === undefined || addition.out === undefined) return {};
  const window = { fromHours: addition.added.hour, toHours: addition.out.hour };
  const low = scene.overLog(seriesExtremes, window, (answer) => answer.lowest);
  const high = scene.overLog(seriesExtremes, window, (answer) => answer.highest);
  return isMissing(low) || isMissing(high) ? {} : { temperatureLow: low.value, temperatureHigh: high.value };
}
