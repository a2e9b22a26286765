import type { Batch, TastingRows } from "../records/index.js";
import { countSays, pairSays, similaritySays } from "./tasting-says-counts.js";
import { attributeSays } from "./tasting-says-scores.js";
import { preferenceSays, rankingSays } from "./tasting-says-choice.js";
import type { TastingReport } from "./types.js";

type Tasting = NonNullable<Batch["tastings"]>[number];
type Told = Omit<TastingReport, "says">;

/** Tests by count, in the order they are told. */
const COUNTS = [["triangle", "triangle", "Triangle"], ["tetrad", "tetrad", "Tetrad"], ["duoTrio", "duo_trio", "Duo-trio"]] as const;

/** What can and can't be concluded, in whole sentences: first whether they could tell, then which was liked, then what moved. */
export function tastingSays(report: Told, tasting: Tasting, rows: TastingRows): string[] {
  const says = [
    ...COUNTS.flatMap(([test, field, title]) => {
      const count = report[test];
      if (count !== undefined) return [countSays(title, count), ...(tasting.asked === "similarity" ? similaritySays(count) : [])];
      const written = tasting[test];
      return written === undefined ? [] : [notCounted(title, field, written, tasting)];
    }),
    ...pairSays(report),
    ...preferenceSays(report, tasting),
    ...report.attributes.map((attribute) => attributeSays(attribute, report)),
    ...leftOut(report, rows),
    ...rankingSays(report),
  ];
  if (says.length === 0) return ["No counts or scores are recorded for this tasting."];
  return report.reservation === undefined ? says : [...says, `What was found can't be put down to one cause for certain: ${report.reservation}.`];
}

function notCounted(title: string, field: string, written: NonNullable<Tasting["triangle"]>, tasting: Tasting): string {
  const { correct, tasters = tasting.tasters } = written;
  if (correct === undefined) return `${title}: ${field}.correct isn't recorded.`;
  if (tasters === undefined) return `${title}: ${correct} right, but how many took the test isn't recorded.`;
  return `${title}: ${correct} right of ${tasters} can't be.`;
}

/** Scores that can't be paired are said, not dropped in silence. */
function leftOut({ attributes, roles }: Told, { scores = [] }: TastingRows): string[] {
  const known = new Map(attributes.map(({ attribute, pairs }) => [attribute, new Set(pairs.map(([taster]) => taster))]));
  const unpaired = new Set(scores.filter(({ attribute, taster }) => known.get(attribute)?.has(taster) !== true).map(({ taster }) => taster));
  const others = [...new Set(scores.map(({ sample }) => sample))].filter((sample) => sample !== roles?.before && sample !== roles?.after);
  return [
    ...(unpaired.size === 0 ? [] : [`Scores without a partner are left out: ${[...unpaired].join(", ")} did not score an attribute in both samples.`]),
    ...(others.length === 0 ? [] : [`Scores of ${others.join(", ")} are recorded, but only ${roles?.before ?? ""} and ${roles?.after ?? ""} are compared here.`]),
  ];
}
