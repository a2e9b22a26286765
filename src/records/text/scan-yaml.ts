import type { ProblemCode } from "../../problems/index.js";

/** Something that a record's YAML may not hold, found before it is parsed. */
export interface ScanFinding {
  readonly code: Extract<ProblemCode, "yaml/anchor" | "yaml/tag" | "yaml/documents" | "yaml/too-deep">;
  readonly offset: number;
  readonly found: string;
}

export interface YamlScan {
  readonly findings: readonly ScanFinding[];
  /** Where the last quoted text begins: it is the one that isn't closed, if one isn't. */
  readonly lastQuote: number | undefined;
}

/** Levels of lists and fields within each other. */
export const DEEPEST = 20;

/** The lexer's own marks: a document begins, a flow collection broke off, a plain or block text follows. */
const MARKS: ReadonlySet<string> = new Set(["\u0002", "\u0018", "\u001F"]);
const TEXT_FOLLOWS = "\u001F";
const FORBIDDEN: Readonly<Record<string, ScanFinding["code"]>> = { "&": "yaml/anchor", "*": "yaml/anchor", "!": "yaml/tag" };

/**
 * Looks through YAML token by token, without recursion: composing a file nested thousands of levels
 * deep would exhaust the stack in a way that can't be caught. Stops at the first place that is too deep.
 *
 * @param tokens the lexer's, in order
 */
export function scanYaml(tokens: readonly string[]): YamlScan {
  const findings: ScanFinding[] = [];
  const depth = new DepthGauge();
  let offset = 0;
  let lastQuote: number | undefined;
  let isText = false;
  for (const token of tokens) {
    if (MARKS.has(token)) {
      isText = token === TEXT_FOLLOWS;
      continue;
    }
    depth.add(token, isText);
    if (depth.now > DEEPEST) return { findings: [...findings, { code: "yaml/too-deep", offset, found: token }], lastQuote };
    const code = isText ? undefined : forbidden(token, offset);
    if (code !== undefined) findings.push({ code, offset, found: token });
    if (/^["']/u.test(token)) lastQuote = offset;
    offset += token.length;
    isText = false;
  }
  return { findings, lastQuote };
}

function forbidden(token: string, offset: number): ScanFinding["code"] | undefined {
  if (token === "---" || token === "...") return offset === 0 ? undefined : "yaml/documents";
  return FORBIDDEN[token.charAt(0)];
}

/** Counts open brackets, and block collections by the columns they begin at. */
class DepthGauge {
  #brackets = 0;
  #column = 0;
  #lineBegins = true;
  readonly #columns: number[] = [];

  get now(): number {
    return this.#brackets + this.#columns.length;
  }

  add(token: string, isText: boolean): void {
    const blank = /^\s*(?:#.*)?$/u.test(token);
    const indicator = !isText && (token === "-" || token === "?");
    if (!isText && (token === "[" || token === "{")) this.#brackets += 1;
    else if (!isText && (token === "]" || token === "}")) this.#brackets = Math.max(0, this.#brackets - 1);
    // The lines of a block text carry their indent; they begin no collection.
    else if (indicator || (this.#lineBegins && !blank && !/^\s/u.test(token))) this.#begin();
    const lastBreak = token.lastIndexOf("\n");
    this.#column = lastBreak === -1 ? this.#column + token.length : token.length - lastBreak - 1;
    this.#lineBegins = lastBreak !== -1 || (this.#lineBegins && (blank || indicator));
  }

  #begin(): void {
    if (this.#brackets > 0) return;
    while ((this.#columns.at(-1) ?? -1) >= this.#column) this.#columns.pop();
    this.#columns.push(this.#column);
  }
}
