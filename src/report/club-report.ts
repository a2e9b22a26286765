import type { CivilTime, Log } from "../records/index.js";
import type { ClubReport } from "./types.js";

/** Who keeps the log, and the day it is computed for. */
export function clubReport({ club }: Log, asOf: CivilTime): ClubReport {
  return {
    name: club.name ?? "Brewing log",
    zone: club.zone,
    units: club.units,
    ...(club.url === undefined ? {} : { url: club.url }),
    asOf: asOf.text,
    cautions: club.cautions ?? [],
  };
}
