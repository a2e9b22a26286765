import { volumeDifference, volumeShare } from "../../science/index.js";
import { flowsOf, packagedTotal, transferredTotal, volumeInto } from "../flows.js";
import { apply, missing, type Result } from "../known.js";
import { totalOf } from "../known-lists.js";
import type { Scene } from "../scene.js";
import { figure } from "./definition.js";

/** Where the beer went, from fermenter to package, L at 20 °C. */
export const lossFigures = [
  figure("transfer-efficiency", "%", "Transfer efficiency", "Beer transferred over what went into the fermenter",
    (scene) => apply(volumeShare, transferredTotal(scene), volumeInto(scene))),
  figure("loss-samples", "L", "Samples", "Beer taken as samples",
    (scene) => recordedList(scene.batch.samples, "samples", flowsOf(scene).samples.map((flow) => flow.volume))),
  figure("loss-dumps", "L", "Dumps", "Slurry dumped: hops and yeast with the beer they hold",
    (scene) => recordedList(scene.batch.dumps, "dumps", flowsOf(scene).dumps.map((flow) => flow.volume))),
  figure("loss-left", "L", "Left behind", "Left in the vessel at the transfer, sediment included",
    (scene) => !scene.isMoved ? missing("transfer.left isn't recorded") : totalOf(flowsOf(scene).left.map((flow) => flow.volume), "L")),
  figure("loss-unaccounted", "L", "Unaccounted", "What the recorded volumes don't explain",
    (scene) => apply(volumeDifference, volumeInto(scene), totalOf(accountedVolumes(scene), "L"))),
  figure("loss-total", "L", "Total loss", "What went into the fermenter less what was packaged",
    (scene) => apply(volumeDifference, volumeInto(scene), packagedTotal(scene))),
  figure("package-yield", "%", "Package yield", "All packages over what went into the fermenter",
    (scene) => apply(volumeShare, packagedTotal(scene), volumeInto(scene))),
];

/** Every recorded flow out of the fermenter; an absent list is not recorded, an empty one is none. */
function accountedVolumes(scene: Scene): Result[] {
  return [scene.figure("loss-samples"), scene.figure("loss-dumps"), scene.figure("loss-left"), packagedTotal(scene)];
}

function recordedList(list: readonly unknown[] | undefined, key: string, volumes: readonly Result[]): Result {
  return list === undefined ? missing(`${key} isn't recorded (write \`${key}: []\` if there were none)`) : totalOf(volumes, "L");
}
