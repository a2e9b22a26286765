// Who may import whom. The table is the one in DEVELOPERS.md; each rule says why it is there.

/** Folders of src/ → our folders they may import besides themselves. */
const MAY_IMPORT = {
  units: [],
  problems: [],
  science: ["units"],
  statistics: [],
  records: ["units", "problems"],
  report: ["units", "problems", "science", "statistics", "records"],
  charts: ["units", "report"],
  site: ["units", "problems", "report", "charts"],
  cli: ["units", "problems", "science", "statistics", "records", "report", "charts", "site"],
};

const WHY = {
  units: "Quantities rest on nothing, so that everything may rest on them.",
  problems: "A problem is a plain value that any stage may hand on.",
  science: "Relations are numbers in, numbers out: they know no records and no pages.",
  statistics: "Statistics are numbers in, numbers out: they know nothing of beer.",
  records: "Reading a log computes nothing.",
  report: "Reports are where records, science and statistics meet; they know nothing of how they are shown.",
  charts: "A chart draws numbers that a report holds; it looks nothing up.",
  site: "A page formats a report; it reads no record and computes nothing.",
  cli: "The edge: commands put the stages together.",
};

/** Outside package → the one folder of src/ that may use it. */
const HOMES = [
  ["records", ["gray-matter", "yaml", "zod", "csv-parse", "temporal-polyfill"], "What a stranger's text goes through is in one place, where it can be hardened."],
  ["charts", ["vega", "vega-lite", "vega-[a-z-]+"], "How pictures are drawn can change without a page or a report noticing."],
  ["site", ["preact", "preact-render-to-string", "markdown-it", "@11ty/eleventy", "ical-generator", "qrcode", "feed", "minisearch"], "How pages are made can change without a report noticing."],
  ["statistics", ["@stdlib/[a-z0-9-]+"], "Distributions are checked against published tables here, and only here."],
  ["cli", ["sharp"], "Pictures are untrusted bytes: they are decoded in one place."],
];

const folderRules = Object.entries(MAY_IMPORT).map(([folder, allowed]) => ({
  name: `${folder}-imports`,
  comment: WHY[folder],
  severity: "error",
  from: { path: `^src/${folder}/` },
  to: { path: "^src/", pathNot: `^src/(${[folder, ...allowed].join("|")})/` },
}));

const homeRules = HOMES.map(([folder, packages, comment]) => ({
  name: `${folder}-is-home`,
  comment,
  severity: "error",
  from: { path: "^src/", pathNot: `^src/${folder}/` },
  to: { path: `(^|/)node_modules/(${packages.join("|")})/` },
}));

module.exports = {
  forbidden: [
    ...folderRules,
    ...homeRules,
    {
      name: "through-the-index",
      comment: "A folder is entered through its index.ts, its table of contents; what isn't listed there may change at any time.",
      severity: "error",
      from: { path: "^src/([^/]+)/" },
      to: { path: "^src/[^/]+/", pathNot: ["^src/$1/", "^src/[^/]+/index\\.tsx?$"] },
    },
    {
      name: "no-cycles",
      comment: "Two files that need each other are one idea in two places, or two ideas in the wrong ones.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "no-drawers",
      comment: "A file is named after what it holds. A drawer for odds and ends only grows.",
      severity: "error",
      from: {},
      to: { path: "(^|/)(utils?|helpers?|common|misc)(/|\\.[jt]sx?$)", pathNot: "node_modules" },
    },
    {
      name: "no-orphans",
      comment: "A file of src/ that nothing imports is dead, unless it is where the program or one of its threads begins.",
      severity: "error",
      from: { orphan: true, path: "^src/", pathNot: ["^src/cli/(main|chart-worker)\\.ts$", "\\.d\\.ts$", "^src/site/assets/"] },
      to: {},
    },
    {
      name: "shipped-packages-only",
      comment: "The program may use only what is installed with it: a devDependency is missing on a user's machine.",
      severity: "error",
      from: { path: "^src/" },
      to: { dependencyTypes: ["npm-dev", "npm-no-pkg", "npm-unknown", "unknown", "undetermined"] },
    },
    {
      name: "resolvable",
      comment: "An import that leads nowhere is caught here too, since types alone can be declared for what isn't there.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "source-stands-alone",
      comment: "The program never needs its tests, benchmarks or scripts.",
      severity: "error",
      from: { path: "^src/" },
      to: { path: "^(tests|bench|scripts)/" },
    },
  ],
  options: {
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^(dist|_site)/" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "require", "node", "default", "types"], extensions: [".ts", ".tsx", ".d.ts", ".js", ".mjs"] },
  },
};
