import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with one plain line of counts, `712 passed, 0 failed`, for logs that are read by a program. */
class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): void {
    const counts = { passed: 0, failed: unhandledErrors.length, skipped: 0 };
    for (const module of modules) {
      // A file that can't even be loaded has no tests to count.
      if (module.state() === "failed" && [...module.children.allTests("failed")].length === 0) counts.failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== "pending") counts[state] += 1;
      }
    }
    const skipped = counts.skipped === 0 ? "" : `, ${counts.skipped} skipped`;
    // After everything else that the run prints.
    process.on("exit", () => process.stdout.write(`${counts.passed} passed, ${counts.failed} failed${skipped}\n`));
  }
}

// Default export: the tool asks for one.
export default ClosingLine;
