import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tests/longest-first.js";

// Default export: the tool asks for one.
export default defineConfig({
  test: {
    reporters: ["default", "./tests/closing-line.ts"],
    // Much of the work is done by programs that a test starts, while the test itself waits.
    maxWorkers: Math.max(2, availableParallelism()),
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          name: "checks",
          include: ["tests/checks/**/*.test.ts"],
          testTimeout: 600_000,
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/build-demo.ts"],
          testTimeout: 600_000,
          hookTimeout: 300_000,
        },
      },
      {
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**", "tests/checks/**"],
          // Files share what they import: a module here holds no state that a test could leave behind.
          isolate: false,
          testTimeout: 60_000,
        },
      },
    ],
  },
});
