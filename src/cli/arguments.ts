import { parseArgs, type ParseArgsConfig } from "node:util";
import { ExpectedFailure } from "./expected-failure.js";

type OptionTable = NonNullable<ParseArgsConfig["options"]>;

/** One command: what it is called with, what it does, and how to get it. */
export interface Command {
  readonly name: string;
  /** As in the help: `check [DIR] [--format text|json|github]`. */
  readonly usage: string;
  /** One line. */
  readonly says: string;
  /** Paragraphs for `gylebook NAME --help`, ready to print. */
  readonly help: string;
  readonly options: OptionTable;
  /** Fewest and most words besides options. */
  readonly words: readonly [number, number];
}

/** A command line, read but not yet judged: option values as written. */
export interface Call {
  readonly words: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
}

const EVERYWHERE: OptionTable = { help: { type: "boolean", short: "h" }, debug: { type: "boolean" } };

/**
 * Reads the words after a command's name.
 *
 * @throws ExpectedFailure for an option that doesn't exist, a missing value, too many or too few words
 */
export function parseCall(command: Command, words: readonly string[]): Call {
  const parsed = parseWords(command, words);
  const [fewest, most] = command.words;
  if (parsed.options["help"] !== true && (parsed.words.length < fewest || parsed.words.length > most)) {
    const what = parsed.words.length < fewest ? "needs more than it was given" : `doesn't take "${parsed.words[most] ?? ""}"`;
    throw new ExpectedFailure(`gylebook ${command.name} ${what}.`, `usage: gylebook ${command.usage}`);
  }
  return parsed;
}

function parseWords(command: Command, words: readonly string[]): Call {
  try {
    const { positionals, values } = parseArgs({
      args: [...words], options: { ...command.options, ...EVERYWHERE }, allowPositionals: true, strict: true,
    });
    return { words: positionals, options: values as Call["options"] };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    // parseArgs' first sentence says what is wrong; what follows is advice on its own quoting.
    const [sentence] = error.message.split(/\.\s/);
    throw new ExpectedFailure(`${(sentence ?? error.message).replace(/\.$/, "")}.`, `usage: gylebook ${command.usage}`);
  }
}

/** The value of an option that takes text, or undefined when it wasn't given. */
export function textOption(call: Call, name: string): string | undefined {
  const value = call.options[name];
  return typeof value === "string" ? value : undefined;
}

/** Whether a switch was given. */
export function isGiven(call: Call, name: string): boolean {
  return call.options[name] === true;
}
