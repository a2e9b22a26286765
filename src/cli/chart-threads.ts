import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { PageCharts } from "../site/index.js";
import type { DrawPage, DrawnPage } from "./draw-page.js";

/** What a thread is sent. */
export interface ChartTask {
  readonly page: PageCharts;
  readonly cacheFolder: string | undefined;
}

/** What it sends back. */
export type ChartResult = { readonly drawn: DrawnPage } | { readonly failure: Error };

const MOST_THREADS = 4;
/** The thread that asks has pages to render meanwhile, and each further one must load Vega and warm up first. */
const OWN_THREADS = 1;

/**
 * Starts threads that draw charts; each takes the next page when it is done with one, and all end after `pageCount` pages.
 *
 * @returns undefined where the program runs uncompiled, since a thread can't load that
 */
export function startChartThreads(pageCount: number): DrawPage | undefined {
  if (!import.meta.url.endsWith(".js")) return undefined;
  const queue = new TaskQueue(pageCount);
  return (page, cacheFolder) => queue.add({ page, cacheFolder });
}

interface Waiting {
  readonly task: ChartTask;
  readonly resolve: (drawn: DrawnPage) => void;
  readonly reject: (failure: Error) => void;
}

class TaskQueue {
  readonly #waiting: Waiting[] = [];
  readonly #idle: ChartThread[] = [];
  #left: number;

  constructor(pageCount: number) {
    this.#left = pageCount;
    const count = Math.min(MOST_THREADS, Math.max(1, availableParallelism() - OWN_THREADS), pageCount);
    this.#idle = Array.from({ length: count }, () => new ChartThread());
  }

  add(task: ChartTask): Promise<DrawnPage> {
    return new Promise((resolve, reject) => {
      this.#waiting.push({ task, resolve, reject });
      this.#next();
    });
  }

  #next(): void {
    const thread = this.#idle.pop();
    if (thread === undefined) return;
    const waiting = this.#waiting.shift();
    if (waiting === undefined) {
      if (this.#left <= 0) thread.end();
      else this.#idle.push(thread);
      return;
    }
    this.#left -= 1;
    void thread.draw(waiting.task).then(waiting.resolve, waiting.reject).then(() => {
      this.#idle.push(thread);
      this.#next();
    });
  }
}

/** One thread, at one task at a time. */
class ChartThread {
  readonly #worker = new Worker(new URL("./chart-worker.js", import.meta.url));

  constructor() {
    // A build that fails elsewhere must be able to end.
    this.#worker.unref();
  }

  draw(task: ChartTask): Promise<DrawnPage> {
    this.#worker.ref();
    return new Promise((resolve, reject) => {
      const done = (settle: () => void): void => {
        this.#worker.off("message", onMessage).off("error", onError);
        this.#worker.unref();
        settle();
      };
      const onMessage = (result: ChartResult): void => done(() => "drawn" in result ? resolve(result.drawn) : reject(result.failure));
      const onError = (failure: Error): void => done(() => reject(failure));
      this.#worker.on("message", onMessage).on("error", onError);
      this.#worker.postMessage(task);
    });
  }

  end(): void {
    void this.#worker.terminate();
  }
}
