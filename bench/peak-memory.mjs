// Loaded with --import: notes what a process took, when it ends.
import { writeFileSync } from "node:fs";

process.on("exit", () => {
  const file = process.env.GYLEBOOK_BENCH_PEAK;
  // maxRSS is in kilobytes.
  if (file !== undefined) writeFileSync(file, String(process.resourceUsage().maxRSS / 1024));
});
