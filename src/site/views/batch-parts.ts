/** The parts of a batch page, in the order a brewer tells it. */
export const BATCH_PARTS = [
  { id: "aim", title: "The aim" },
  { id: "what-happened", title: "What happened" },
  { id: "dry-hop", title: "The dry hop" },
  { id: "ledger", title: "Where the beer went" },
  { id: "tasters", title: "What the tasters found" },
  { id: "changes", title: "What changed since the last one" },
  { id: "package", title: "Into the package" },
  { id: "recipe", title: "Recipe and notes" },
  { id: "working", title: "The working" },
] as const;

export type BatchPartId = (typeof BATCH_PARTS)[number]["id"];
