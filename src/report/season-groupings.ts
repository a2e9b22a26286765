import type { BatchReport, DryHopReport } from "./types.js";

/** A setting that is named, not measured. */
export interface Grouping {
  readonly id: "form" | "hop" | "yeast" | "vessel";
  readonly title: string;
  /** As it stands inside a sentence. */
  readonly words: string;
  readonly groupOf: (batch: BatchReport) => string | undefined;
}

/** Batches with more than one form or hop are of the one that makes up more than half the mass; else mixed. */
export const GROUPINGS: readonly Grouping[] = [
  { id: "form", title: "Form of the dry hop", words: "form", groupOf: ({ dryHops }) => mostOf(dryHops, ({ form }) => form) },
  { id: "hop", title: "Hop of the dry hop", words: "hop", groupOf: ({ dryHops }) => mostOf(dryHops, ({ hop }) => hop) },
  { id: "yeast", title: "Yeast", words: "yeast", groupOf: ({ recipe }) => recipe.yeast?.what },
  { id: "vessel", title: "Vessel", words: "vessel", groupOf: ({ equipment }) => equipment },
];

function mostOf(dryHops: readonly DryHopReport[], nameOf: (addition: DryHopReport) => string): string | undefined {
  const names = [...new Set(dryHops.map(nameOf))];
  if (names.length < 2) return names[0];
  const mass = (name: string): number => dryHops.filter((addition) => nameOf(addition) === name).reduce((sum, { grams = 0 }) => sum + grams, 0);
  const total = names.reduce((sum, name) => sum + mass(name), 0);
  return names.find((name) => mass(name) > total / 2) ?? "mixed";
}
