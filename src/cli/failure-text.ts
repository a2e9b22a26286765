import { ExpectedFailure } from "./expected-failure.js";

/**
 * What the user reads when something was thrown.
 *
 * @param debug print the stack of a bug
 */
export function failureText(error: unknown, debug: boolean): string {
  if (error instanceof ExpectedFailure) return `${error.message}\n${error.advice === undefined ? "" : `  ${error.advice}\n`}`;
  const message = error instanceof Error ? error.message : String(error);
  if (debug) return `${error instanceof Error ? error.stack ?? message : message}\n`;
  return `This is a bug in gylebook: ${message}\n  run the same command with --debug to see where\n`;
}
