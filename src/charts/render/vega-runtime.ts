import type { Runtime } from "vega";
import type { TopLevelSpec } from "vega-lite";

type VegaModules = readonly [vega: typeof import("vega"), vegaLite: typeof import("vega-lite")];

let modules: Promise<VegaModules> | undefined;
const runtimes = new Map<string, Runtime>();

/** A spec as layered-spec builds it, seen as what differs between charts and what doesn't. */
interface Parts {
  readonly width: number;
  readonly height: number;
  readonly padding: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly datasets: Readonly<Record<string, readonly object[]>>;
  readonly params: readonly { readonly name: string; readonly value?: unknown }[];
}

/** Exported by Vega, missing from its types. */
interface TextMetrics {
  readonly textMetrics: { readonly canvas: (use: boolean) => void };
}

/** Vega takes a quarter of a second to load: only a build that has something to draw pays for it. */
function loadVega(): Promise<VegaModules> {
  modules ??= Promise.all([import("vega"), import("vega-lite")]);
  return modules;
}

/**
 * Draws a spec as Vega prints it. Specs that differ in data, params and size alone share one compiled runtime.
 *
 * @throws Error when the spec doesn't compile without a warning: that is a bug in a chart
 */
export async function drawSpec(spec: TopLevelSpec): Promise<string> {
  const [vega] = await loadVega();
  const parts = spec as unknown as Parts;
  const view = new vega.View(await runtimeOf(spec), { renderer: "none", loader: refusingLoader(vega) });
  // Texts are measured alike on every machine, whether or not it can draw on a canvas.
  (vega as unknown as TextMetrics).textMetrics.canvas(false);
  vega.resetSVGDefIds();
  for (const [name, rows] of Object.entries(parts.datasets)) view.data(name, rows.map((row) => ({ ...row })));
  for (const { name, value } of parts.params) view.signal(name, value);
  try {
    return await view.width(parts.width).height(parts.height).padding(parts.padding).toSVG();
  } finally {
    view.finalize();
  }
}

async function runtimeOf(spec: TopLevelSpec): Promise<Runtime> {
  const skeleton = skeletonOf(spec);
  const key = JSON.stringify(skeleton);
  const known = runtimes.get(key);
  if (known !== undefined) return known;
  const [vega, vegaLite] = await loadVega();
  const runtime = vega.parse(vegaLite.compile(skeleton, { logger: strictLogger() }).spec);
  runtimes.set(key, runtime);
  return runtime;
}

function skeletonOf(spec: TopLevelSpec): TopLevelSpec {
  const parts = spec as unknown as Parts;
  return {
    ...spec, width: 0, height: 0, padding: 0,
    datasets: Object.fromEntries(Object.keys(parts.datasets).map((name) => [name, []])),
    params: parts.params.map(({ name }) => ({ name, value: 0 })),
  };
}

function strictLogger() {
  const logger = {
    level: () => logger, info: () => logger, debug: () => logger,
    warn: (...words: readonly unknown[]): never => { throw new Error(`chart spec: ${words.join(" ")}`); },
    error: (...words: readonly unknown[]): never => { throw new Error(`chart spec: ${words.join(" ")}`); },
  };
  return logger as unknown as import("vega").LoggerInterface;
}

/** Charts hold their own data; nothing is ever fetched. */
function refusingLoader(vega: VegaModules[0]) {
  const refuse = (uri: string): never => { throw new Error(`a chart must not load "${uri}"`); };
  return { ...vega.loader(), load: refuse, sanitize: refuse, http: refuse, file: refuse };
}
