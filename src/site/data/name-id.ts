import { createHash } from "node:crypto";

/** The namespace of this program's names: a random UUID, fixed for good. */
const NAMESPACE = Buffer.from("5f0c2b7e9d3a4c1b8e6f1a2d7c90b345", "hex");

/**
 * A permanent id for something with a name: the same name gives the same id on every
 * build and wherever the site lies (a name-based UUID, RFC 9562, 5.5).
 */
export function nameId(...name: readonly string[]): string {
  const hash = createHash("sha1").update(NAMESPACE).update(name.join("\n")).digest().subarray(0, 16);
  hash[6] = ((hash[6] ?? 0) & 0x0f) | 0x50;
  hash[8] = ((hash[8] ?? 0) & 0x3f) | 0x80;
  const hex = hash.toString("hex");
  return `urn:uuid:${[hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-")}`;
}
