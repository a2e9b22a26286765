/** Which figures each part tells; the working tells them all again with how they came about. */
export const PART_FIGURES = {
  inShort: new Set(["abv", "original-gravity", "final-gravity", "latest-gravity", "bitterness", "color", "dry-hop-dose"]),
  brewhouse: new Set(["potential-extract", "mash-efficiency", "brewhouse-efficiency", "boil-off", "bitterness", "color"]),
  fermentation: new Set([
    "original-gravity", "final-gravity", "latest-gravity", "apparent-attenuation", "real-attenuation", "abv",
    "energy", "fermentation-time", "fermentation-temperature", "fermentation-peak", "terminal-hours",
  ]),
  crash: new Set(["crash-temperature", "crash-hours", "crash-rate", "crash-lag", "crash-lowest", "freezing-point", "settling-cell", "settling-clump", "crash-drawn", "crash-drawn-most"]),
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
