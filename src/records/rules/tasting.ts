import { folded, nearestName, type Problem } from "../../problems/index.js";
import type { Batch } from "../schema/index.js";
import type { FieldPath } from "../text/yaml-places.js";
import { problem, type RecordRule, type RuleInput } from "./in-record.js";

type Tasting = NonNullable<Batch["tastings"]>[number];

/** Words that name something else where samples are counted. */
const RESERVED: ReadonlySet<string> = new Set(["attribute", "tasters", "none"]);
/** Nobody reads further suggestions; looking for them would let a hostile record take long. */
const MOST_SUGGESTED = 50;
const COUNTED_TESTS = [["triangle", "triangle"], ["tetrad", "tetrad"], ["duoTrio", "duo_trio"]] as const;

const eachTasting = (look: (input: RuleInput, tasting: Tasting, path: FieldPath) => Problem[]): RecordRule =>
  (input) => (input.batch.tastings ?? []).flatMap((tasting, index) => look(input, tasting, ["tastings", index]));

/** Samples have names that can't be taken for something else where they are counted, and there are two or more. */
export const samplesAreNamed = eachTasting((input, { samples, pair, preference }, path) => {
  if (samples === undefined) return [];
  const isCounted = pair !== undefined || preference !== undefined;
  const reserved = (isCounted ? samples : []).filter(({ sample }) => RESERVED.has(sample))
    .map(({ sample }) => problem(input, [...path, "samples", sample], "tasting/sample-reserved", {}, sample));
  const tooFew = samples.length < 2 ? [problem(input, [...path, "samples"], "tasting/samples-too-few", {})] : [];
  return [...reserved, ...tooFew];
});

/** Counts and orders use the names of samples that were poured. */
export const samplesAreKnown = eachTasting((input, tasting, path) => {
  if (tasting.samples === undefined) return [];
  const known = new Set(tasting.samples.map(({ sample }) => sample));
  const used: [FieldPath, string][] = [
    ...(tasting.pair ?? []).flatMap(({ counts }, index) => counts.map(({ sample }): [FieldPath, string] => [[...path, "pair", index, sample], sample])),
    ...(tasting.preference?.counts ?? []).map(({ sample }): [FieldPath, string] => [[...path, "preference", sample], sample]),
    ...(tasting.order ?? []).map((sample, index): [FieldPath, string] => [[...path, "order", index], sample]),
  ];
  return used.filter(([, sample]) => !known.has(sample))
    .map(([at, sample], index) => problem(input, at, "tasting/sample-unknown", { nearest: index < MOST_SUGGESTED ? nearestName(sample, known) : undefined, known: [...known].slice(0, 12).join(", ") }, sample));
});

/** No more answers than tasters. */
export const countsFitTasters = eachTasting((input, tasting, path) => COUNTED_TESTS.flatMap(([key, name]) => {
  const test = tasting[key];
  if (test === undefined) return [];
  const took = tookPart(input, test.tasters, tasting, [...path, name]);
  const tooMany = took.tasters !== undefined && test.correct !== undefined && test.correct > took.tasters;
  return [...took.problems, ...(tooMany ? [problem(input, [...path, name, "correct"], "tasting/count-above-tasters", { tasters: String(took.tasters) })] : [])];
}));

/** Votes add up to the tasters who gave them. */
export const votesSum = eachTasting((input, tasting, path) => {
  const pairs = (tasting.pair ?? []).map((pair, index) => ({ ...pair, none: 0, at: [...path, "pair", index] as FieldPath }));
  const preference = tasting.preference === undefined ? [] : [{ ...tasting.preference, none: tasting.preference.none ?? 0, at: [...path, "preference"] as FieldPath }];
  return [...pairs, ...preference].flatMap(({ counts, tasters, none, at }) => {
    const took = tookPart(input, tasters, tasting, at);
    const sum = counts.reduce((total, { count }) => total + count, none);
    // Without any answer yet it is planned.
    if (counts.length === 0 && none === 0) return took.problems;
    if (took.tasters === undefined || sum === took.tasters) return took.problems;
    const above = counts.find(({ count }) => count > (took.tasters ?? 0));
    const given = { tasters: String(took.tasters) };
    return [...took.problems, above === undefined
      ? problem(input, at, "tasting/votes-do-not-sum", given, [...counts.map(({ count }) => count), ...(none > 0 ? [none] : [])].join(" + "))
      : problem(input, [...at, above.sample], "tasting/count-above-tasters", given)];
  });
});

/** Attributes that differ only in capitals, spaces or hyphens are one attribute spelt two ways. */
export const attributesAreSpeltAlike: RecordRule = (input) => {
  const { aim } = input.batch;
  const first = new Map<string, { spelt: string; field: string }>();
  const used: [FieldPath, string][] = [
    ...(["raise", "lower", "hold"] as const).flatMap((kind) => (aim?.[kind] ?? []).map((name, index): [FieldPath, string] => [["aim", kind, index], name])),
    ...(aim?.primary === undefined ? [] : [[["aim", "primary"], aim.primary] satisfies [FieldPath, string]]),
    ...(input.batch.tastings ?? []).flatMap(({ pair }, index) =>
      (pair ?? []).map(({ attribute }, place): [FieldPath, string] => [["tastings", index, "pair", place, "attribute"], attribute])),
  ];
  return used.flatMap(([path, name]) => {
    const earlier = first.get(folded(name));
    if (earlier === undefined) first.set(folded(name), { spelt: name, field: input.placeOf(path).field });
    return earlier === undefined || earlier.spelt === name ? [] : [problem(input, path, "tasting/attribute-spelling", { other: earlier.spelt, field: earlier.field })];
  });
};

/** How many took a test: its own number, or the tasting's; never more than the tasting's. */
function tookPart(input: RuleInput, own: number | undefined, { tasters }: Tasting, path: FieldPath): { tasters: number | undefined; problems: Problem[] } {
  const tooMany = own !== undefined && tasters !== undefined && own > tasters;
  return { tasters: own ?? tasters, problems: tooMany ? [problem(input, [...path, "tasters"], "tasting/count-above-tasters", { tasters: String(tasters) })] : [] };
}
