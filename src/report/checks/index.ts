import type { Scene } from "../scene.js";
import type { CheckReport } from "../types.js";
import { cellarChecks } from "./cellar.js";
import { crashChecks } from "./crash.js";
import type { CheckDefinition } from "./definition.js";
import { dryHopChecks } from "./dry-hop.js";
import { fermentationChecks } from "./fermentation.js";
import { packageChecks } from "./package.js";
import { styleChecks } from "./style.js";
import { tastingChecks } from "./tasting.js";

/** Every check, in the order a batch is told. */
export const CHECKS: readonly CheckDefinition[] = [
  ...fermentationChecks,
  ...dryHopChecks,
  ...crashChecks,
  ...cellarChecks,
  ...packageChecks,
  ...styleChecks,
  ...tastingChecks,
];

/** The checks that a batch's record raises. */
export function checkReports(scene: Scene): CheckReport[] {
  return CHECKS.flatMap(({ id, title, find }) => {
    const finding = find(scene);
    return finding === undefined ? [] : [{ id, title, ...finding }];
  });
}
