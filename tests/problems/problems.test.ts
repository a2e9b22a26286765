import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { countLine, formatProblems, nearestName, problemAt, problemKinds, type Problem } from "../../src/problems/index.js";

const PLACE = { file: "batches/2026-03-tideline-3.md", line: 41, column: 13, field: "dry_hops[0].amount", found: "70" };
const MISSING = problemAt("record/unit-missing", PLACE, { expects: 'a mass such as "70 g"', repaired: "70 g" });

describe("a problem in text", () => {
  test("reads as the exemplar has it", () => {
    expect(formatProblems([MISSING], "text")).toBe([
      'batches/2026-03-tideline-3.md:41:13  dry_hops[0].amount: expected a mass such as "70 g", found "70"',
      "    Write the unit: 70 g",
      "    [record/unit-missing]",
      "",
      "1 error in 1 file.",
    ].join("\n"));
  });

  test("of a whole file names no field, and nothing is written as nothing", () => {
    expect(formatProblems([{ ...MISSING, field: "", found: "" }], "text")).toContain('md:41:13  expected a mass such as "70 g", found nothing\n');
  });

  test("that is only a warning says so", () => {
    expect(formatProblems([{ ...MISSING, severity: "warning" }], "text")).toContain("[record/unit-missing] (a warning: the build goes on)");
  });

  test("shows what was found on one line, shortened, without signs that could disturb a terminal", () => {
    const found = (text: string): string => problemAt("record/unit-missing", { ...PLACE, found: text }, { expects: "x", repaired: "y" }).found;
    expect(found("a\n  b\u001B[31mc\u0007\u202Ed")).toBe("a   b [31mc d");
    expect([...found("é".repeat(200))]).toHaveLength(60);
    expect(found("x".repeat(60))).toBe("x".repeat(60));
  });

  test("shows names of files and fields without such signs either", () => {
    const text = formatProblems([{ ...MISSING, file: "batches/a\u001B[2J.md", field: "a\nb", fix: "c\u202Ed" }], "text");
    expect(text).toContain("batches/a [2J.md:41:13  a b: expected");
    expect(text).toContain("    c d\n");
  });
});

describe("problems for programs", () => {
  test("are JSON with the fields that are documented", () => {
    expect(JSON.parse(formatProblems([MISSING], "json"))).toEqual([{
      code: "record/unit-missing", severity: "error", file: "batches/2026-03-tideline-3.md", line: 41, column: 13,
      field: "dry_hops[0].amount", expected: 'a mass such as "70 g"', found: "70", fix: "Write the unit: 70 g",
    }]);
    expect(formatProblems([], "json")).toBe("[]");
  });

  test("are annotations whose every part is escaped", () => {
    // Workflow commands: % CR LF are escaped in the message; : and , in the properties too.
    const tricky: Problem = { ...MISSING, file: "batches/50%,a:b.md", fix: "one\ntwo" };
    expect(formatProblems([tricky], "github")).toBe(
      '::error file=batches/50%25%2Ca%3Ab.md,line=41,col=13,title=record/unit-missing::dry_hops[0].amount: expected a mass such as "70 g", found "70"%0Aone two',
    );
    expect(formatProblems([], "github")).toBe("");
  });
});

test.each([
  [0, 0, 0, "No problems."], [1, 0, 1, "1 error in 1 file."], [3, 1, 2, "3 errors and 1 warning in 2 files."], [0, 2, 1, "2 warnings in 1 file."], [10, 0, 3, "10 errors in 3 files."],
])("%i errors and %i warnings in %i files close with a count", (errors, warnings, files, line) => {
  const problems = Array.from({ length: errors + warnings }, (_, index): Problem => ({ ...MISSING, severity: index < errors ? "error" : "warning", file: `f${index % files}` }));
  expect(countLine(problems)).toBe(line);
});

describe("the nearest name", () => {
  test.each([
    ["dryhops", ["dry_hops", "hops"], "dry_hops"], ["pakage", ["package", "plan"], "package"], ["Amercan Pale Ale", ["American IPA", "American Pale Ale"], "American Pale Ale"],
    ["teh", ["the", "ten"], "the"], ["Kolsch", ["Kölsch"], "Kölsch"], ["ml", ["L", "mL"], "mL"],
  ])("of %s is found", (written, known, nearest) => {
    expect(nearestName(written, known)).toBe(nearest);
  });

  test.each([["J9", ["J1", "J2"]], ["xyz", ["package"]], ["", ["a"]]])("of %s is none", (written, known) => {
    expect(nearestName(written, known)).toBeUndefined();
  });

  test("is a name that is known, and a known name's nearest is itself", () => {
    fc.assert(fc.property(fc.string({ maxLength: 20 }), fc.array(fc.string({ maxLength: 20 }), { maxLength: 6 }), (written, known) => {
      const nearest = nearestName(written, known);
      expect(nearest === undefined || known.includes(nearest)).toBe(true);
      expect(nearestName(written, [written])).toBe(written);
    }), { seed: 7 });
  });
});

describe("the catalogue", () => {
  const kinds = problemKinds();

  test("has a title and an explanation for every code, and codes of one form", () => {
    for (const { code, title, explanation } of kinds) {
      expect(code).toMatch(/^(?:log|record|yaml|csv|photo|tasting|competition)\/[a-z0-9-]+$/u);
      expect(title).toMatch(/^[A-Z].*[^.]$/u);
      expect(explanation).toMatch(/[.:].*$/u);
    }
  });

  test("has a wording for every code that can be shown without a record", () => {
    for (const { expected, fix } of kinds) expect(`${expected}. ${fix}`).not.toMatch(/undefined|\[object|^\.|\. $/u);
    expect(kinds.find(({ code }) => code === "record/unit-missing")).toMatchObject({ severity: "error", fix: "Write the unit: …" });
  });

  test("never speaks the language of programs", () => {
    for (const { title, explanation } of kinds) expect(`${title} ${explanation}`).not.toMatch(/\b(?:union|object|undefined|string|array|null|parse|schema)\b/iu);
  });
});
