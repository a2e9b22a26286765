import { readFileSync } from "node:fs";

/** The program's version, from its package. Part of cache keys and page keys. */
export const VERSION = readVersion();

function readVersion(): string {
  const manifest: unknown = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
  const version = typeof manifest === "object" && manifest !== null && "version" in manifest ? manifest.version : undefined;
  return typeof version === "string" ? version : "unknown";
}
