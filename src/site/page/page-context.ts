import type { ComponentChildren } from "preact";
import type { UnitSystem } from "../../units/index.js";
import type { MethodView } from "../method-view.js";
import { relativeLink } from "./relative-link.js";

/** What every component of one page may know beside its own props. */
export interface PageContext {
  /** The page's path inside the site. */
  readonly path: string;
  readonly units: UnitSystem;
  readonly methods: ReadonlyMap<string, MethodView>;
}

/** Where nothing says what page it is. */
const NOWHERE: PageContext = { path: "index.html", units: "metric", methods: new Map() };

/** A page is rendered in one go, from the outside in: so one variable holds it for all that stands inside. */
let rendering = NOWHERE;

/** Stands around everything on a page. */
export function PageContextProvider({ value, children }: { readonly value: PageContext; readonly children?: ComponentChildren }): ComponentChildren {
  rendering = value;
  return children;
}

export function leavePage(): void {
  rendering = NOWHERE;
}

/** The page being rendered. */
export function usePage(): PageContext {
  return rendering;
}

/** Makes links from the page being rendered to paths inside the site. */
export function useLink(): (to: string) => string {
  const { path } = usePage();
  return (to) => relativeLink(path, to);
}
