import { describe, expect, it } from "vitest";
import { siteAssets } from "../../src/site/index.js";
import { rendered, sampleInputs, sampleSite } from "./sample-site.js";

const files = sampleSite();
const known = new Set([
  ...files.map(({ path }) => path), ...siteAssets().map(({ path }) => path), ...[...sampleInputs().photos.values()].map(({ path }) => path),
]);
const idsOf = (path: string): Set<string> => new Set([...rendered(files, path).matchAll(/ id="([^"]+)"/gu)].map(([, id]) => id ?? ""));

/** Links of a page, resolved as a browser would, without leaving the site's folder. */
function linksOf(path: string): { link: string; target: string; fragment: string }[] {
  return [...rendered(files, path).matchAll(/ (?:href|src)="([^"]*)"/gu)].map(([, link = ""]) => {
    const url = new URL(link.replaceAll("&amp;", "&"), `file:///site/${path}`);
    return { link, target: url.protocol === "file:" ? decodeURIComponent(url.pathname).replace(/^\/site\//u, "") : url.href, fragment: url.hash.slice(1) };
  });
}

describe("links", () => {
  const pages = files.filter(({ path }) => path.endsWith(".html")).map(({ path }) => path);

  it("are relative, name a file and lead to one that exists", () => {
    for (const path of pages) {
      for (const { link, target } of linksOf(path)) {
        if (target === "https://example.org/tide") continue; // the brewer's own link, in the notes
        expect(known.has(target), `${path} links to ${link}`).toBe(true);
        expect(link, path).not.toMatch(/^(?:\/|[a-z]+:)/iu);
      }
    }
  });

  it("to a place on a page find that place", () => {
    const ids = new Map(pages.map((path) => [path, idsOf(path)]));
    for (const path of pages) {
      for (const { link, target, fragment } of linksOf(path)) {
        // The side-by-side page reads its fragment itself: a list of batches.
        if (target === "compare.html" && path !== target) expect(known.has(`batches/${fragment}.html`) || fragment === "", `${path} links to ${link}`).toBe(true);
        else if (fragment !== "" && target.endsWith(".html")) expect(ids.get(target)?.has(fragment), `${path} links to ${link}`).toBe(true);
      }
    }
  });

  it("lead from every measured figure of a batch to its working or its method", () => {
    const html = rendered(files, "batches/tp-03.html");
    expect(html).toMatch(/<a class="figure" href="#working-abv">/u);
    expect(html).toMatch(/<a class="figure" href="\.\.\/methods\/dry-hop-dose\.html">/u);
  });

  it("lead from a list to the working on the batch's own page", () => {
    expect(rendered(files, "batches/index.html")).toContain('href="tp-03.html#working-abv"');
    expect(rendered(files, "seasons/pales-2026.html")).toContain('href="../batches/tp-03.html"');
  });
});
