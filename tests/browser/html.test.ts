import { readFileSync } from "node:fs";
import path from "node:path";
import { FileSystemConfigLoader, HtmlValidate } from "html-validate/node";
import { expect, inject, test } from "vitest";
import { pagesOf } from "./site-files.js";

const site = inject("demoSite");

const validator = new HtmlValidate(new FileSystemConfigLoader({
  root: true,
  extends: ["html-validate:recommended"],
  rules: {
    // The renderer closes void elements with a slash, which HTML allows and ignores.
    "void-style": "off",
  },
}));

test("html-validate finds nothing on any page of the demo", async () => {
  const pages = pagesOf(site);
  expect(pages.length).toBeGreaterThan(20);
  const wrong: string[] = [];
  for (const file of pages) {
    const report = await validator.validateString(readFileSync(path.join(site, file), "utf8"), file);
    wrong.push(...report.results.flatMap(({ messages }) => messages.map(({ line, column, message, ruleId }) => `${file}:${line}:${column} ${message} [${ruleId}]`)));
  }
  expect(wrong.slice(0, 40)).toEqual([]);
});

test("html-validate as set up here finds what is wrong", async () => {
  const { valid } = await validator.validateString("<!doctype html><html lang=\"en\"><head><title>x</title></head><body><p><div></p><img src=\"a.png\"></body></html>");
  expect(valid).toBe(false);
});
