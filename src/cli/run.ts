import { nearestName } from "../problems/index.js";
import { parseCall } from "./arguments.js";
import { COMMANDS, type LazyCommand, commandHelp, overview } from "./command-list.js";
import type { Effects, ExitCode } from "./effects.js";
import { ExpectedFailure } from "./expected-failure.js";
import { failureText } from "./failure-text.js";
import { VERSION } from "./version.js";

/**
 * Runs one command line. Never throws: what goes wrong is printed, with a stack only after `--debug`.
 *
 * @param words what follows the program's name
 */
export async function run(words: readonly string[], effects: Effects): Promise<ExitCode> {
  try {
    return await dispatch(words, effects);
  } catch (error) {
    effects.complain(effects.stop.aborted ? "Stopped.\n" : failureText(error, words.includes("--debug")));
    return 2;
  }
}

async function dispatch(words: readonly string[], effects: Effects): Promise<ExitCode> {
  const [name, ...rest] = words.filter((word, index) => index > 0 || word !== "--debug");
  if (name === undefined || name === "--help" || name === "-h" || name === "help") return print(effects, overview());
  if (name === "--version") return print(effects, `${VERSION}\n`);
  const command = commandNamed(name);
  const call = parseCall(command, rest);
  if (call.options["help"] === true) return print(effects, commandHelp(command));
  return (await command.load()).run(call, effects);
}

function print(effects: Effects, text: string): ExitCode {
  effects.print(text);
  return 0;
}

function commandNamed(name: string): LazyCommand {
  const names = COMMANDS.map((command) => command.name);
  const found = COMMANDS.find((command) => command.name === name);
  if (found !== undefined) return found;
  const nearest = nearestName(name, names);
  const advice = nearest === undefined ? `commands: ${names.join(", ")}` : `did you mean ${nearest}?`;
  throw new ExpectedFailure(`gylebook has no command "${name}".`, advice);
}
