import { defineConfig } from "vitest/config";

// Default export: the tool asks for one.
export default defineConfig({
  test: {
    reporters: ["default", "./tests/closing-line.ts"],
    projects: [
      {
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/build-demo.ts"],
          // One browser at a time: pages are opened from one file after the other.
          fileParallelism: false,
          testTimeout: 600_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
});
