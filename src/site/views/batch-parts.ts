import type { BatchReport, CheckReport } from "../../report/index.js";

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

/** Which figures each part tells; the working tells them all again with how they came about. */
export const PART_FIGURES = {
  inShort: new Set(["abv", "original-gravity", "final-gravity", "latest-gravity", "bitterness", "color", "dry-hop-dose"]),
  brewhouse: new Set(["potential-extract", "mash-efficiency", "brewhouse-efficiency", "boil-off", "bitterness", "color"]),
  fermentation: new Set([
    "original-gravity", "final-gravity", "latest-gravity", "apparent-attenuation", "real-attenuation", "abv",
    "energy", "fermentation-time", "fermentation-temperature", "fermentation-peak", "terminal-hours",
  ]),
  crash: new Set(["crash-temperature", "crash-hours", "crash-rate", "crash-lag", "crash-lowest", "freezing-point", "crash-drawn", "crash-drawn-most"]),
  dryHop: new Set([
    "dry-hop-mass", "dry-hop-dose", "dry-hop-oil", "dry-hop-contact", "dry-hop-temperature", "dry-hop-gravity-drop", "dry-hop-ph-rise",
  ]),
  ledger: new Set(["transfer-efficiency", "package-yield", "loss-total"]),
  package: new Set(["residual-co2", "keg-pressure", "priming-sugar", "package-oxygen"]),
} as const satisfies Record<string, ReadonlySet<string>>;

/** Steps on the way to other figures, and the ledger's own lines: told in the ledger's table and in the working. */
export const WORKING_ONLY: ReadonlySet<string> = new Set([
  "original-extract", "apparent-extract", "real-extract", "abw", "loss-samples", "loss-dumps", "loss-left", "loss-unaccounted",
]);

/** Where each check is told; one that isn't listed is told with what happened. */
const CHECK_PART: Readonly<Record<string, BatchPartId>> = {
  "terminal-before-dry-hop": "dry-hop", "contact-time": "dry-hop", "contact-temperature": "dry-hop", "hop-creep": "dry-hop",
  "vdk-before-crash": "what-happened", "crash-hold": "what-happened", "crash-vessel": "what-happened", "crash-air": "what-happened", "crash-freezing": "what-happened",
  "dumped-before-transfer": "ledger", sanitised: "ledger", "ledger-closes": "ledger",
  "package-purge": "package", "package-pressure": "package", "bottle-carbonation": "package",
  "style-targets": "aim", "tasting-comparable": "tasters",
};

/** The order of urgency: what failed is read first. */
const URGENCY: Readonly<Record<CheckReport["verdict"], number>> = { fail: 0, watch: 1, unknown: 2, pass: 3 };

/** The checks told in one part, those that failed first. */
export function checksOf(report: BatchReport, part: BatchPartId): CheckReport[] {
  return report.checks
    .filter(({ id }) => (CHECK_PART[id] ?? "what-happened") === part)
    .toSorted((one, other) => URGENCY[one.verdict] - URGENCY[other.verdict]);
}
