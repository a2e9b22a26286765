/**
 * Something that goes wrong without a bug being to blame: a folder that isn't there, an option that doesn't exist.
 * Its message is a whole sentence for the user; no stack is shown.
 */
export class ExpectedFailure extends Error {
  override readonly name = "ExpectedFailure";

  /** @param advice what to do about it, one line, without a full stop */
  constructor(message: string, readonly advice?: string) {
    super(message);
  }
}

/** The error code of a failed file operation (`ENOENT`, `EACCES`, …), or undefined for anything else. */
export function fileErrorCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !("code" in error)) return undefined;
  return typeof error.code === "string" ? error.code : undefined;
}
