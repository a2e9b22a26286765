/**
 * Everything a command takes from or does to the machine, apart from reading and writing files.
 * Commands get it as their one argument besides their own, so a test can stand in for a terminal and a clock.
 */
export interface Effects {
  /** Absolute. Relative paths on the command line start here. */
  readonly workingFolder: string;
  /** True where someone watches: progress and summaries are shown there only. */
  readonly isTerminal: boolean;
  /** Where caches may lie; absolute, never inside a log. */
  readonly cacheFolder: string;
  /** IANA name of the machine's zone, for new logs. */
  readonly zone: string;
  /** The one clock. */
  readonly now: () => Date;
  /** Writes text to standard output as it is. */
  readonly print: (text: string) => void;
  /** Writes text to standard error as it is. */
  readonly complain: (text: string) => void;
  /** Aborted when the user asks to stop. */
  readonly stop: AbortSignal;
}

/** What the shell gets back: 0 fine, 1 problems in the log, 2 wrong usage or a bug. */
export type ExitCode = 0 | 1 | 2;
