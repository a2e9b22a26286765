/** Kinds of page that have their data beside them, under the same name. */
const BESIDE = /^(?:batches|seasons|series|hops|competitions)\/(?!index\.)[^/]+\.html$/u;

/** Where the data that a page is made from lie: JSON first, then CSV. Pages of help have none. */
export function pageData(path: string): readonly [json: string, csv: string] | undefined {
  if (path.startsWith("help/")) return undefined;
  if (path.startsWith("methods/")) return ["methods/index.json", "methods/index.csv"];
  const name = path.replace(/\.html$/u, "");
  return BESIDE.test(path) ? [`${name}.json`, `${name}.csv`] : ["batches/index.json", "data/batches.csv"];
}
