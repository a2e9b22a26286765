import { test } from "vitest";
import { formatProblems } from "/work/main/src/problems/index.js";
import { parseLog, readLogFolder } from "/work/main/src/records/index.js";
test("x", () => {
  for (const dir of (process.env["DIRS"] ?? "").split(":")) {
    const { log, problems } = parseLog(readLogFolder(dir));
    console.log(dir + "\n" + formatProblems(problems, "text"));
    console.log(log.batches.map((b) => [b.slug, b.logs.map((l) => l.timesMs.length), b.photos.length, b.tastings.map((t) => t.scores?.length)]), log.broken);
  }
});
