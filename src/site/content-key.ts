import { createHash } from "node:crypto";

/** A short hash of plain JSON: equal content, equal key, on any machine. */
export function contentKey(...content: readonly unknown[]): string {
  return createHash("sha256").update(JSON.stringify(content)).digest("hex").slice(0, 20);
}
