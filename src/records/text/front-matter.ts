import matter from "gray-matter";
import { problemAt, type Place, type Problem } from "../../problems/index.js";
import { decodeText } from "./decode.js";
import { parseYaml, type YamlTree } from "./yaml-tree.js";

/** A Markdown file taken apart: its fields and its notes. */
export interface FrontMatter {
  /** Absent where the fields couldn't be read at all. */
  readonly tree?: YamlTree;
  readonly body: string;
  /** The line on which the notes begin. */
  readonly bodyLine: number;
  readonly problems: readonly Problem[];
}

const MOST_FIELDS = 256 * 1024;
const MOST_NOTES = 2 * 1024 * 1024;

/**
 * Splits a record into its fields and notes. Any language but YAML is refused before the file reaches
 * the splitter, which would run some of them as programs.
 */
export function parseFrontMatter(file: string, content: string | Uint8Array): FrontMatter {
  const { text, problems } = decodeText(file, content, { most: MOST_FIELDS + MOST_NOTES });
  if (problems.some(({ code }) => code !== "log/byte-order-mark")) return { body: "", bodyLine: 1, problems };
  const refusal = refuseForm(file, text);
  if (refusal !== undefined) return { body: "", bodyLine: 1, problems: [...problems, refusal] };
  return { ...split(file, text), ...(problems.length === 0 ? {} : { problems }) };
}

function split(file: string, text: string): FrontMatter {
  let tree: YamlTree | undefined;
  // Options are passed every time: without them the splitter answers from a cache that forgets its errors.
  const parts = matter(text, {
    language: "yaml",
    delimiters: "---",
    engines: { yaml: { parse: (fields: string) => { tree = parseYaml(fields, file); return {}; } } },
  });
  const bodyLine = text.slice(0, text.length - parts.content.length).split("\n").length;
  return { tree: tree ?? parseYaml("", file), body: parts.content, bodyLine, problems: [] };
}

function refuseForm(file: string, text: string): Problem | undefined {
  const whole: Place = { file, line: 1, column: 1, field: "", found: "" };
  const first = text.split("\n", 1)[0] ?? "";
  const language = first.slice(3).trim();
  if (!first.startsWith("---") || language.startsWith("-")) return problemAt("record/front-matter-missing", { ...whole, found: first }, {});
  if (language !== "") return problemAt("record/front-matter-language", { ...whole, column: 4, found: language }, {});
  const close = text.indexOf("\n---");
  if (close === -1) return problemAt("record/front-matter-open", whole, {});
  const line = text.slice(0, close + 1).split("\n").length;
  const closing = text.slice(close + 1).split("\n", 1)[0] ?? "";
  if (closing.trimEnd() !== "---") return problemAt("record/front-matter-open", { ...whole, line }, { found: closing });
  return close > MOST_FIELDS
    ? problemAt("log/too-large", { ...whole, found: `${Math.ceil(close / 1024)} KB of fields` }, { limit: `${MOST_FIELDS / 1024} KB of fields` })
    : undefined;
}
