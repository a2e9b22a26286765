import { readFileSync } from "node:fs";
import path from "node:path";
import { filesOf, pagesOf } from "./site-files.js";

/**
 * The pages that stand for all others where looking at each takes long. One of each kind: a page's folder, what follows
 * a neighbour's name (`tp-03` → `tp-03-sheet`), and the state of the batch it is about. Then whatever shows something
 * that none of those shows: an element, a class, an attribute. So every part of a page is looked at somewhere.
 */
export function choosePages(site: string): readonly string[] {
  const kindOf = kindsIn(site);
  const fullestFirst = pagesOf(site)
    .map((file): Page => {
      const text = readFileSync(path.join(site, file), "utf8");
      return { file, text, kind: kindOf(file), parts: partsOf(text) };
    })
    .sort((one, other) => other.text.length - one.text.length);
  const chosen = new Set<string>();
  const seen = new Set<string>();
  const choose = (isNew: (page: Page) => boolean): void => {
    for (const page of fullestFirst.filter(({ file }) => !chosen.has(file))) {
      if (!isNew(page)) continue;
      chosen.add(page.file);
      for (const mark of [page.kind, ...page.parts]) seen.add(mark);
    }
  };
  choose(({ kind }) => !seen.has(kind));
  choose(({ parts }) => parts.some((part) => !seen.has(part)));
  return [...chosen].sort();
}

interface Page { readonly file: string; readonly text: string; readonly kind: string; readonly parts: readonly string[] }

function kindsIn(site: string): (file: string) => string {
  const files = new Set(filesOf(site));
  return (file) => {
    const [folder, name] = [path.dirname(file), path.basename(file, ".html")];
    if (folder === "." || name === "index") return file;
    const words = name.split("-");
    const lengths = words.map((_word, index) => index + 1);
    const owner = lengths.map((length) => words.slice(0, length).join("-")).find((slug) => files.has(`${folder}/${slug}.html`)) ?? name;
    return `${folder}/*${name.slice(owner.length)} ${statusIn(path.join(site, folder, `${owner}.json`))}`;
  };
}

/** The state of a batch, from its data file; nothing for pages about something else. */
function statusIn(file: string): string {
  try {
    return (JSON.parse(readFileSync(file, "utf8")) as { readonly status?: string }).status ?? "";
  } catch {
    return "";
  }
}

/** Elements, classes and attributes that a page is made of. */
function partsOf(text: string): string[] {
  const tags = [...text.matchAll(/<([a-z][\w-]*)((?:\s+[^\s=>]+(?:="[^"]*")?)*)/g)];
  return [...new Set(tags.flatMap(([, element = "", attributes = ""]) => [
    element,
    ...[...attributes.matchAll(/([^\s=]+)(?:="([^"]*)")?/g)].flatMap(([, attribute = "", value = ""]) =>
      /^(?:class|role|type)$/.test(attribute) ? value.split(" ").map((word) => `${attribute}=${word}`) : [`${element} ${attribute}`]),
  ]))];
}
