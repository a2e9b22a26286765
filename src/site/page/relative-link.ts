/**
 * The link from one file of the site to another, so that the site works from
 * disk and under any sub-folder: always relative, always naming the file.
 *
 * @param from the page the link stands on: "batches/tp-03.html"
 * @param to a path inside the site, with or without a fragment
 */
export function relativeLink(from: string, to: string): string {
  const [path = "", fragment] = to.split("#", 2);
  const hash = fragment === undefined ? "" : `#${fragment}`;
  if (path === from && hash !== "") return hash;
  const here = from.split("/").slice(0, -1);
  const there = path.split("/");
  let shared = 0;
  while (shared < here.length && shared < there.length - 1 && here[shared] === there[shared]) shared += 1;
  return "../".repeat(here.length - shared) + there.slice(shared).map(encodeURIComponent).join("/") + hash;
}
