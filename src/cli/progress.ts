import type { Effects } from "./effects.js";

/** Shows what is being done, on a terminal only. */
export interface Progress {
  /** Throws when the user asked to stop. Begins a stage, or says how far it has come ("Drawing charts: page 3 of 40"): what stands before the colon names it. */
  readonly say: (what: string) => void;
  /** Removes the line. */
  readonly done: () => void;
}

const CLEAR_LINE = "\r\u001b[2K";

/**
 * A progress line on standard error that vanishes when done; silent in a pipe.
 *
 * @param timed with --debug: lists what each stage took, in milliseconds, when done
 */
export function startProgress(effects: Effects, timed = false): Progress {
  const show = effects.isTerminal ? effects.complain : (): void => undefined;
  const watch = new StageWatch(effects);
  return {
    say: (what) => {
      effects.stop.throwIfAborted();
      watch.enter(what.replace(/:.*/s, ""));
      show(`${CLEAR_LINE}${what} …`);
    },
    done: () => {
      show(CLEAR_LINE);
      if (timed) effects.complain(watch.table());
    },
  };
}

/** How long each stage took. */
class StageWatch {
  readonly #began = new Map<string, number>();

  constructor(private readonly effects: Effects) {}

  enter(stage: string): void {
    if (!this.#began.has(stage)) this.#began.set(stage, this.effects.now().getTime());
  }

  table(): string {
    const stages = [...this.#began];
    const end = this.effects.now().getTime();
    return stages.map(([stage, from], index) => `${stage}: ${(stages[index + 1]?.[1] ?? end) - from} ms\n`).join("");
  }
}
