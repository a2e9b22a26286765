import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Longest first, so that nothing long is left for the end while the other cores are idle. Nothing else depends on the order. */
const LONGEST = [
  "tests/checks/code.test.ts",
  "tests/browser/pages-in-browser.test.ts",
  "tests/browser/same-bytes.test.ts",
  "tests/browser/",
  "tests/cli/stopped.test.ts",
  "tests/cli/",
];

const rank = ({ moduleId }: TestSpecification): number => {
  const place = LONGEST.findIndex((part) => moduleId.includes(part));
  return place === -1 ? LONGEST.length : place;
};

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((one, other) => rank(one) - rank(other));
  }
}
