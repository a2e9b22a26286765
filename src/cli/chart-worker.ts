import { parentPort } from "node:worker_threads";
import type { ChartResult, ChartTask } from "./chart-threads.js";
import { drawHere } from "./draw-page.js";

// A thread that draws charts, page by page, for chart-threads.ts.
parentPort?.on("message", (task: ChartTask) => {
  void drawHere(task.page, task.cacheFolder)
    .then((drawn): ChartResult => ({ drawn }), (failure: unknown): ChartResult => ({ failure: failure instanceof Error ? failure : new Error(String(failure)) }))
    .then((result) => parentPort?.postMessage(result));
});
