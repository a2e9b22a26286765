/** A path inside a log, or why a name doesn't lead to one. */
export type ResolvedPath = { readonly ok: true; readonly path: string } | { readonly ok: false; readonly reason: "outside" | "address" };

const ADDRESS = /^(?:[a-z][a-z0-9+.-]*:|\/\/)/iu;
const DRIVE = /^[a-z]:[\\/]/iu;

/**
 * The path that a name written in a file leads to, without asking the disk.
 *
 * @param from path of the file that holds the name
 * @param written the name: relative, with forward slashes
 */
export function resolveInLog(from: string, written: string): ResolvedPath {
  if (DRIVE.test(written) || written.includes("\\") || written.includes("\0")) return { ok: false, reason: "outside" };
  if (ADDRESS.test(written)) return { ok: false, reason: "address" };
  if (written.startsWith("/") || written.startsWith("~")) return { ok: false, reason: "outside" };
  const parts = folderOf(from).split("/").filter((part) => part !== "");
  for (const part of written.split("/")) {
    if (part === "..") {
      if (parts.pop() === undefined) return { ok: false, reason: "outside" };
    } else if (part !== "." && part !== "") parts.push(part);
  }
  return { ok: true, path: parts.join("/") };
}

/** `batches/x/index.md` → `batches/x` */
export function folderOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf("/")));
}

/** Names that are never part of a log. */
export function isLeftOut(name: string): boolean {
  return name.startsWith("_") || name.startsWith(".") || name === "node_modules";
}
