import { figureDefinition } from "./figures/index.js";
import { isForced, kegPressureOf, packageOxygenOf, primingSugarOf } from "./figures/package.js";
import type { PackageEntry } from "./batch-parts.js";
import { figureReport, isMissing, type Result } from "./known.js";
import type { Scene } from "./scene.js";
import type { PackageReport } from "./types.js";

/** One row a package: what to set or weigh, and what isn't recorded. */
export function packageReports(scene: Scene): PackageReport[] {
  return scene.packages.map(({ entry, field }) => {
    const volume = scene.packageVolume(entry, field);
    const pressure = isForced(entry) ? kegPressureOf(scene, entry, field) : undefined;
    const sugar = entry.priming === undefined ? undefined : primingSugarOf(scene, entry, field);
    const oxygen = packageOxygenOf(scene, entry, field);
    return {
      ...described(entry),
      ...(isMissing(volume) ? {} : { litres: volume.value }),
      ...reported("pressure", "keg-pressure", pressure),
      ...reported("primingSugar", "priming-sugar", sugar),
      ...reported("oxygen", "package-oxygen", oxygen),
      missing: [volume, pressure, sugar, oxygen].flatMap((result) => result !== undefined && isMissing(result) ? [result.missing] : []),
    };
  });
}

function described(entry: PackageEntry): Omit<PackageReport, "missing"> {
  const { purge, priming } = entry;
  return {
    into: entry.into ?? "keg",
    count: entry.count ?? 1,
    ...(entry.date === undefined ? {} : { date: entry.date.text }),
    ...(entry.carbonation === undefined ? {} : { carbonationAsked: entry.carbonation.value }),
    ...(entry.measured === undefined ? {} : { carbonationMeasured: entry.measured.value }),
    ...(entry.temperature === undefined ? {} : { temperatureC: entry.temperature.value }),
    ...(entry.vessel?.limit === undefined ? {} : { limitKPa: entry.vessel.limit.value }),
    ...(priming?.sugar === undefined ? {} : { sugar: priming.sugar }),
    ...(purge === undefined ? {} : { purge: purgeWords(purge) }),
  };
}

function purgeWords(purge: NonNullable<PackageEntry["purge"]>): string {
  if (purge.by === "liquid") return `pushed out from full${purge.left === undefined ? "" : `, ${purge.left.text} left`}`;
  const cycles = purge.cycles === undefined ? "cycles of gas" : `${purge.cycles} cycles of gas`;
  return `${cycles}${purge.pressure === undefined ? "" : ` to ${purge.pressure.text}`}`;
}

/** One package's own, in the unit of the figure that it is a part of. */
function reported(key: "pressure" | "primingSugar" | "oxygen", figure: string, result: Result | undefined): Partial<PackageReport> {
  return result === undefined || isMissing(result) ? {} : { [key]: figureReport({ ...result, unit: figureDefinition(figure).unit }) };
}
