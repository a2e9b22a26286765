import { Composer, Document, isAlias, isMap, isScalar, isSeq, Lexer, type LineCounter, Parser, type CST, type Node, type Pair, type YAMLMap } from "yaml";
import { problemAt, type Place, type Problem } from "../../problems/index.js";
import { DEEPEST, scanYaml, type YamlScan } from "./scan-yaml.js";
import { fieldName, linesOf, stepInto, textOf, type FieldPath } from "./yaml-places.js";
import { isOpenQuote, ruleOf } from "./yaml-problems.js";

/**
 * YAML as plain data: texts (numbers and dates as written), true and false, null for an empty value,
 * lists, and fields without a prototype.
 */
export interface YamlTree {
  readonly data: unknown;
  readonly problems: readonly Problem[];
  /** Values that are already reported and stand empty in `data`. */
  readonly refused: readonly FieldPath[];
  /** Place and source of the value at a path; of the nearest field around it where there is none. */
  readonly placeOf: (path: FieldPath) => Place;
  /** Place of a field's name. */
  readonly placeOfKey: (path: FieldPath) => Place;
}

const MOST_SYNTAX_PROBLEMS = 3;

/**
 * Reads YAML strictly: core schema, so that `12:30` and dates stay text; no anchors, aliases, merge keys
 * or tags; no field twice. Never throws for a bad text.
 *
 * @param text whole lines; the first is line 1 of the file
 * @param file path inside the log, for the problems
 */
export function parseYaml(text: string, file: string): YamlTree {
  const tokens = [...new Lexer().lex(text)];
  const scan = scanYaml(tokens);
  const tooDeep = scan.findings.some(({ code }) => code === "yaml/too-deep");
  const lines = linesOf(text);
  return new TreeReader({ text, file, lines, scan, document: tooDeep ? compose([], 0) : compose(tokens, text.length) }).read();
}

/** The first document of the tokens that were scanned; a second one is already reported. */
function compose(tokens: readonly string[], length: number): Document {
  const parser = new Parser();
  const composer = new Composer({ schema: "core", uniqueKeys: false, prettyErrors: false, logLevel: "silent" });
  const [document] = composer.compose(parsed(), true, length);
  return document ?? new Document();

  function* parsed(): Generator<CST.Token> {
    for (const token of tokens) yield* parser.next(token);
    yield* parser.end();
  }
}

interface Source {
  readonly text: string;
  readonly file: string;
  readonly lines: LineCounter;
  readonly scan: YamlScan;
  readonly document: Document;
}

class TreeReader {
  readonly #source: Source;
  readonly #problems: Problem[] = [];
  readonly #refused: FieldPath[] = [];

  constructor(source: Source) {
    this.#source = source;
  }

  read(): YamlTree {
    this.#reportScan();
    this.#reportSyntax();
    const { contents } = this.#source.document;
    const usable = this.#source.document.errors.length === 0;
    const data = usable && contents !== null ? this.#valueOf(contents, []) : undefined;
    return {
      data, problems: this.#problems, refused: this.#refused,
      placeOf: (path) => this.#placeOf(path, false), placeOfKey: (path) => this.#placeOf(path, true),
    };
  }

  #reportScan(): void {
    for (const { code, offset, found } of this.#source.scan.findings) {
      const place = this.#at(offset, found, "");
      this.#problems.push(code === "yaml/too-deep" ? problemAt(code, place, { limit: DEEPEST }) : problemAt(code, place, {}));
    }
  }

  #reportSyntax(): void {
    const seen = new Set<number>();
    for (const error of this.#source.document.errors) {
      const offset = isOpenQuote(error) ? this.#source.scan.lastQuote ?? error.pos[0] : error.pos[0];
      const place = this.#at(offset, this.#lineFrom(offset), "");
      if (seen.has(place.line) || seen.size >= MOST_SYNTAX_PROBLEMS) continue;
      seen.add(place.line);
      this.#problems.push(problemAt("yaml/syntax", place, ruleOf(error)));
    }
  }

  #valueOf(node: Node | null, path: FieldPath): unknown {
    if (node === null) return null;
    if (isAlias(node)) {
      this.#refused.push(path);
      return null;
    }
    if (isScalar(node)) return node.type === "PLAIN" && typeof node.value === "number" ? node.source ?? String(node.value) : scalarValue(node.value);
    if (isSeq(node)) return node.items.map((item, index) => this.#valueOf(item as Node | null, [...path, index]));
    return isMap(node) ? this.#fieldsOf(node, path) : null;
  }

  #fieldsOf(map: YAMLMap, path: FieldPath): Record<string, unknown> {
    const fields = Object.create(null) as Record<string, unknown>;
    const first = new Map<string, number>();
    for (const [index, { key, value }] of map.items.entries()) {
      if (map.flow === true && value === null && index > 0 && this.#reportComma(map.items[index - 1], key as Node | null, path, fields)) continue;
      const name = this.#nameOf(key as Node | null, map);
      if (name === undefined) continue;
      const offset = (key as Node).range?.[0] ?? 0;
      const earlier = first.get(name);
      if (earlier !== undefined) {
        this.#problems.push(problemAt("yaml/key-twice", this.#at(offset, name, fieldName([...path, name])), { key: name, line: this.#source.lines.linePos(earlier).line }));
        continue;
      }
      first.set(name, offset);
      fields[name] = this.#valueOf(value as Node | null, [...path, name]);
    }
    return fields;
  }

  /** Within braces a comma ends a value: of `{amount: 1,5 kg}` or `{stored: 1 C, purged}` the rest would be a field. */
  #reportComma(above: Pair | undefined, key: Node | null, path: FieldPath, fields: Record<string, unknown>): boolean {
    const value = (above?.value ?? null) as Node | null;
    const [end, start] = [value?.range?.[1], key?.range?.[0]];
    const [before, rest] = [this.#sourceOf(value), this.#sourceOf(key)];
    const name = textOf((above?.key as { source?: unknown } | undefined)?.source);
    if (end === undefined || start === undefined || name === "" || !isScalar(value)) return false;
    const isNumber = start === end + 1 && /^[+-]?\d+$/u.test(before) && /^\d/u.test(rest);
    const field = fieldName([...path, name]);
    if (isNumber) {
      this.#problems.push(problemAt("record/decimal-comma", this.#at(value.range?.[0] ?? 0, `${before},${rest}`, field), { expects: "a number", repaired: `${before}.${rest}` }));
      this.#refused.push([...path, name]);
      fields[name] = null;
    } else this.#problems.push(problemAt("yaml/comma-in-text", this.#at(start, rest, field), { quoted: `${name}: "${before}, ${rest}"` }));
    return true;
  }

  /** A field's name; undefined, and reported, where it isn't a plain word. */
  #nameOf(key: Node | null, map: YAMLMap): string | undefined {
    const offset = key?.range?.[0] ?? map.range?.[0] ?? 0;
    const name = isScalar(key) ? textOf(key.source ?? key.value) : "";
    if (name === "<<") {
      this.#problems.push(problemAt("yaml/anchor", this.#at(offset, "<<", ""), {}));
      return undefined;
    }
    if (name !== "" && name !== "__proto__") return name;
    if (isAlias(key)) return undefined;
    const rule = { rule: "a field's name before the colon", fix: "Write a field's name as one plain word" };
    this.#problems.push(problemAt("yaml/syntax", this.#at(offset, this.#lineFrom(offset), ""), rule));
    return undefined;
  }

  #placeOf(path: FieldPath, ofKey: boolean): Place {
    let node = this.#source.document.contents;
    let offset = node?.range?.[0] ?? 0;
    let shown: PropertyKey[] = [];
    for (const [depth, segment] of path.entries()) {
      // One entry may stand where a list could: its fields are then found without a position.
      if (segment === 0 && node !== null && !isSeq(node)) continue;
      shown = [...shown, segment];
      const next = stepInto(node, segment);
      if (next === undefined) return this.#at(offset, "", fieldName([...shown, ...path.slice(depth + 1)]));
      node = next.value;
      offset = (ofKey && depth === path.length - 1 ? next.key : next.value?.range?.[0]) ?? next.key ?? offset;
    }
    const found = ofKey ? String(path.at(-1) ?? "") : this.#sourceOf(node);
    return this.#at(offset, found, fieldName(shown));
  }

  #sourceOf(node: Node | null): string {
    if (node?.range === null || node?.range === undefined) return "";
    if (isScalar(node) && typeof node.value === "string") return node.value;
    return this.#source.text.slice(node.range[0], node.range[1]);
  }

  #at(offset: number, found: string, field: string): Place {
    const { line, col } = this.#source.lines.linePos(Math.min(offset, this.#source.text.length));
    return { file: this.#source.file, line: Math.max(1, line), column: Math.max(1, col), field, found };
  }

  #lineFrom(offset: number): string {
    return this.#source.text.slice(offset).split("\n", 1)[0] ?? "";
  }
}

const scalarValue = (value: unknown): unknown => (typeof value === "string" || typeof value === "boolean" || value === null ? value : textOf(value));
