import { createContext } from "preact";
import { useContext } from "preact/hooks";
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

const Context = createContext<PageContext>({ path: "index.html", units: "metric", methods: new Map() });

export const PageContextProvider = Context.Provider;

/** The page being rendered. */
export function usePage(): PageContext {
  return useContext(Context);
}

/** Makes links from the page being rendered to paths inside the site. */
export function useLink(): (to: string) => string {
  const { path } = usePage();
  return (to) => relativeLink(path, to);
}
