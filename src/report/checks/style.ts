import { styleRows } from "../style-rows.js";
import type { Scene } from "../scene.js";
import { found, unknown, type CheckDefinition, type Finding } from "./definition.js";

/** The style's targets, each figure with its uncertainty. */
export const styleChecks: readonly CheckDefinition[] = [
  {
    id: "style-targets",
    title: "Style targets",
    says: "Each figure against the style's range, with the readings' uncertainty and the relation's own: inside passes, on the line is to watch, outside fails.",
    find: styleTargets,
  },
];

function styleTargets(scene: Scene): Finding | undefined {
  const { style } = scene.batch;
  if (style === undefined || scene.status === "planned") return undefined;
  const rows = styleRows(scene);
  const known = rows.filter((row) => row.verdict !== "unknown");
  if (known.length === 0) return unknown("style", "none of the style's figures can be computed yet");
  const outside = rows.filter((row) => row.verdict === "fail");
  const onLine = rows.filter((row) => row.verdict === "watch");
  const missing = rows.length - known.length;
  const says = [
    outside.length > 0 ? `Outside ${style}: ${outside.map((row) => row.says).join("; ")}.` : "",
    onLine.length > 0 ? `On the line, within what the readings and relations can be off by: ${onLine.map((row) => row.says).join("; ")}.` : "",
    outside.length + onLine.length === 0 ? `Inside ${style} on all ${known.length} figures that are known.` : "",
    missing > 0 ? `${missing} can't be told.` : "",
  ].filter((part) => part !== "").join(" ");
  return found(outside.length > 0 ? "fail" : onLine.length > 0 ? "watch" : "pass", "style", rows.map((row) => row.figure), says);
}
