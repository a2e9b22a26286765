import type { Scene } from "../scene.js";
import { found, unknown, type CheckDefinition, type Finding } from "./definition.js";

/** Whether a tasting can speak of the hops at all. */
export const tastingChecks: readonly CheckDefinition[] = [
  {
    id: "tasting-comparable",
    title: "Samples comparable",
    says: "Samples that differ in more than the hops (carbonation, age, warmth) can't be told apart by the hops.",
    find: tastingComparable,
  },
];

function tastingComparable(scene: Scene): Finding | undefined {
  const tastings = (scene.batch.tastings ?? []).filter((tasting) => tasting.public);
  if (tastings.length === 0) return undefined;
  const differing = tastings.flatMap((tasting) => tasting.differs ?? []);
  if (differing.length > 0) {
    return found("watch", "record", ["tastings.differs"], `The samples also differed in ${[...new Set(differing)].join(", ")}: what tasters found can't be put down to the hops alone.`);
  }
  if (tastings.some((tasting) => tasting.differs === undefined)) {
    return unknown("record", "what differed between the samples besides the hops isn't recorded (tastings.differs; [] when nothing did)");
  }
  return found("pass", "record", ["tastings.differs"], "Nothing else differed between the samples, by the record.");
}
