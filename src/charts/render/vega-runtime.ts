import type { Changeset, Runtime, View } from "vega";
import type { TopLevelSpec } from "vega-lite";
import { readScene, type Scene, type SceneTools, type Shape } from "./scene-shapes.js";

type VegaModules = readonly [vega: typeof import("vega"), vegaLite: typeof import("vega-lite")];

let modules: Promise<VegaModules> | undefined;
const runtimes = new Map<string, Runtime>();
const views = new Map<string, View>();

/** A spec as layered-spec builds it, seen as what differs between charts and what doesn't. */
interface Parts {
  readonly width: number;
  readonly height: number;
  readonly padding: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly datasets: Readonly<Record<string, readonly object[]>>;
  readonly params: readonly { readonly name: string; readonly value?: unknown }[];
}

/** Exported by Vega, missing from its types. */
interface Untyped extends SceneTools {
  readonly textMetrics: { readonly canvas: (use: boolean) => void };
  readonly changeset: () => Changes;
}

interface Changes {
  /** Whether to tidy up at once what is kept of rows taken out; Vega does so anyway when there are many. */
  readonly clean: (atOnce: boolean) => Changes;
  readonly remove: (rows: object[]) => Changes;
  readonly insert: (rows: object[]) => Changes;
  /** Takes all rows for changed. */
  readonly reflow: () => Changeset;
}

/** Vega takes a quarter of a second to load: only a build that has something to draw pays for it. */
function loadVega(): Promise<VegaModules> {
  modules ??= Promise.all([import("vega"), import("vega-lite")]).then((loaded) => {
    // Texts are measured alike on every machine, whether or not it can draw on a canvas.
    (loaded[0] as unknown as Untyped).textMetrics.canvas(false);
    return loaded;
  });
  return modules;
}

/** Specs are drawn one after the other, since they share views. */
let before: Promise<unknown> = Promise.resolve();

/**
 * Draws a spec. Specs that differ in data, params and size alone share one view, since setting up a view
 * takes longer than drawing with it.
 *
 * @throws Error when the spec doesn't compile without a warning: that is a bug in a chart
 */
export function drawSpec(spec: TopLevelSpec): Promise<readonly Shape[]> {
  const drawn = before.then(() => drawNow(spec));
  before = drawn.catch(() => undefined);
  return drawn;
}

async function drawNow(spec: TopLevelSpec): Promise<readonly Shape[]> {
  const vega = (await loadVega())[0] as unknown as Untyped;
  const parts = spec as unknown as Parts;
  const view = await viewOf(spec);
  for (const [name, rows] of Object.entries(parts.datasets)) fillDataset(view, name, rows, vega.changeset());
  for (const { name, value } of parts.params) view.signal(name, value);
  await view.width(parts.width).height(parts.height).padding(parts.padding).runAsync();
  const scene = (view.scenegraph() as unknown as { readonly root: Scene }).root;
  return readScene(scene, parts.padding.left, parts.padding.top, vega);
}

/** Gives a data set its rows. Rows that the view has are written over: that costs a fraction of taking them out and putting others in. */
function fillDataset(view: View, name: string, rows: readonly object[], changes: Changes): void {
  const known = (view.data(name) as Record<string, unknown>[] | undefined) ?? [];
  if (known.length + rows.length === 0) return;
  known.slice(0, rows.length).forEach((row, index) => {
    const next = rows[index] ?? {};
    for (const column in row) if (!(column in next)) Reflect.deleteProperty(row, column);
    Object.assign(row, next);
  });
  const more = rows.slice(known.length).map((row) => ({ ...row }));
  view.change(name, changes.clean(false).remove(known.slice(rows.length)).insert(more).reflow());
}

/** A view for each skeleton and width: drawings of one width hold about as much, so that most of what a view has stays in use. */
async function viewOf(spec: TopLevelSpec): Promise<View> {
  const skeleton = JSON.stringify(skeletonOf(spec));
  const key = `${(spec as unknown as Parts).width} ${skeleton}`;
  const known = views.get(key);
  if (known !== undefined) return known;
  const [vega, vegaLite] = await loadVega();
  const runtime = runtimes.get(skeleton) ?? vega.parse(vegaLite.compile(skeletonOf(spec), { logger: strictLogger() }).spec);
  const view = new vega.View(runtime, { renderer: "none", loader: refusingLoader(vega) });
  runtimes.set(skeleton, runtime);
  views.set(key, view);
  return view;
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
