import type { TastingPlan } from "../../report/index.js";

/** What isn't known before the tasting. */
const OPEN = "…";

/** The tasting as the record takes it, with dots where the results go. */
export function resultToWrite({ name, date, samples, asked, tasters, rounds, seed }: TastingPlan): string {
  const names = samples.map((sample) => yamlText(sample.name));
  const lines = [
    `- name: ${yamlText(name)}`,
    `  date: ${date?.slice(0, 10) ?? OPEN}`,
    `  samples: {${samples.map((sample) => `${yamlText(sample.name)}: ${yamlText(sample.drawnFrom)}`).join(", ")}}`,
    `  differs: [${OPEN}]          # what else differed; [] if nothing did`,
    `  asked: ${asked}`,
    `  tasters: ${tasters}`,
    ...rounds.flatMap((round) => roundLines(round, names)),
    `  seed: ${yamlText(seed)}`,
  ];
  return lines.join("\n");
}

const FIELDS = { triangle: "triangle", tetrad: "tetrad", "duo-trio": "duo_trio" } as const;

function roundLines({ kind, attribute, attributes, preference }: TastingPlan["rounds"][number], names: readonly string[]): string[] {
  const counts = names.map((name) => `${name}: ${OPEN}`).join(", ");
  switch (kind) {
    case "pair": return [`  pair: {attribute: ${yamlText(attribute ?? OPEN)}, ${counts}}`];
    case "ranking": return ["  ranking: ranks.csv        # taster,sample,rank; 1 is first", ...scoresLine(attributes)];
    case "scores": return [...preference ? [`  preference: {${counts}, none: ${OPEN}}`] : [], ...scoresLine(attributes)];
    default: return [`  ${FIELDS[kind]}: {correct: ${OPEN}}`];
  }
}

function scoresLine(attributes: readonly string[]): string[] {
  return attributes.length === 0 ? [] : ["  scores: scores.csv        # taster,sample,attribute,score"];
}

/** Text as YAML reads it as text: quoted where it could be anything else. */
function yamlText(text: string): string {
  const plain = /^[\p{L}][\p{L}\p{N} /_-]*$/u.test(text) && !/^(?:true|false|null|yes|no|on|off|y|n)$/iu.test(text);
  return plain ? text.trim() : JSON.stringify(text);
}
