import type { z } from "zod";
import { nearestName, problemAt, type Problem } from "../problems/index.js";
import type { CamelCased } from "./camel-case.js";
import { toolDefaults } from "./defaults/index.js";
import type { Hop, Malt, Style } from "./log.js";
import { validateHours } from "./rules/skipped-hours.js";
import { clubSchema, equipmentSchema, hopsSchema, maltsSchema, stylesSchema, type Club, type Equipment } from "./schema/index.js";
import { validate } from "./schema/validate.js";
import { decodeText } from "./text/decode.js";
import { parseYaml } from "./text/yaml-tree.js";

/** What a log shares between its batches. */
export interface Shared {
  readonly club: Club;
  readonly equipment: ReadonlyMap<string, Equipment>;
  readonly styles: ReadonlyMap<string, Style>;
  readonly hops: ReadonlyMap<string, Hop>;
  readonly malts: ReadonlyMap<string, Malt>;
  /** Names that are defined, even where what is said of them has problems; absent where the file can't be read. */
  readonly names: { readonly equipment?: readonly string[]; readonly styles?: readonly string[] };
  readonly problems: readonly Problem[];
}

export const SHARED_FILES = ["club.yaml", "equipment.yaml", "styles.yaml", "hops.yaml", "malts.yaml"] as const;
export type SharedContents = Readonly<Partial<Record<(typeof SHARED_FILES)[number], string | Uint8Array>>>;

const MOST_YAML = 1024 * 1024;

/** Reads the files of shared/; each may be missing. */
export function parseShared(contents: SharedContents): Shared {
  const club = parseClub(contents["club.yaml"]);
  const equipment = parseNamed("equipment.yaml", equipmentSchema, contents["equipment.yaml"]);
  const styles = parseNamed("styles.yaml", stylesSchema, contents["styles.yaml"]);
  const hops = parseNamed("hops.yaml", hopsSchema, contents["hops.yaml"]);
  const malts = parseNamed("malts.yaml", maltsSchema, contents["malts.yaml"]);
  const defaults = toolDefaults();
  return {
    club: club.club,
    equipment: new Map(equipment.entries.map(({ name, value }) => [name, value])),
    styles: over(defaults.styles, styles.entries, "shared/styles.yaml"),
    hops: over(defaults.hops, hops.entries, "shared/hops.yaml"),
    malts: over(defaults.malts, malts.entries, "shared/malts.yaml"),
    names: {
      ...(equipment.names === undefined ? {} : { equipment: equipment.names }),
      ...(styles.names === undefined ? {} : { styles: [...styles.names, ...defaults.styles.keys()] }),
    },
    problems: [...club.problems, ...[equipment, styles, hops, malts].flatMap(({ problems }) => problems)],
  };
}

/** A file in shared/ that nothing reads. */
export function unknownShared(path: string): Problem | undefined {
  const name = path.slice(path.lastIndexOf("/") + 1);
  if (!/\.ya?ml$/iu.test(name) || SHARED_FILES.some((known) => known === name)) return undefined;
  const nearest = nearestName(name.replace(/\.yml$/iu, ".yaml"), SHARED_FILES);
  return problemAt("log/file-unknown", { file: path, line: 1, column: 1, field: "", found: name }, { nearest, known: SHARED_FILES.join(", ") });
}

function parseClub(content: string | Uint8Array | undefined): { club: Club; problems: readonly Problem[] } {
  const file = "shared/club.yaml";
  const decoded = content === undefined ? { text: "", problems: [] } : decodeText(file, content, { most: MOST_YAML });
  const tree = parseYaml(decoded.text, file);
  const { partial, written, problems } = validate(clubSchema, tree);
  const club = { ...partial, zone: partial.zone ?? "UTC", units: partial.units ?? "metric" };
  return { club, problems: [...decoded.problems, ...problems, ...validateHours(written, club.zone, tree.placeOf)] };
}

interface Named<Value> {
  readonly entries: readonly { readonly name: string; readonly value: Value }[];
  readonly names?: readonly string[];
  readonly problems: readonly Problem[];
}

type NamedSchema<Value> = z.ZodType<readonly { readonly name: string; readonly value: Value }[]>;

function parseNamed<Value>(name: string, schema: NamedSchema<Value>, content: string | Uint8Array | undefined): Named<CamelCased<Value>> {
  const file = `shared/${name}`;
  const decoded = content === undefined ? { text: "", problems: [] } : decodeText(file, content, { most: MOST_YAML });
  const tree = parseYaml(decoded.text, file);
  const { partial, problems } = validate(schema, tree);
  const entries = Array.isArray(partial) ? partial as Named<CamelCased<Value>>["entries"] : [];
  const isRead = tree.problems.length === 0 && decoded.problems.length === 0;
  const names = typeof tree.data === "object" && tree.data !== null ? Object.keys(tree.data) : [];
  return { entries, ...(isRead ? { names } : {}), problems: [...decoded.problems, ...problems] };
}

/** The tool's own entries with a log's over them, whole entry by whole entry. */
function over<Entry extends object>(defaults: ReadonlyMap<string, Entry>, own: readonly { readonly name: string; readonly value: object }[], source: string): ReadonlyMap<string, Entry> {
  const entries = own.map(({ name, value }) => [name, { ...value, source, status: "own" }] as unknown as [string, Entry]);
  return new Map([...defaults, ...entries]);
}
