import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../src/cli/command-list.js";
import { emptyFolder, runCommand } from "./stand-in.js";

describe("wrong usage is said in plain words, exits 2 and shows no stack", () => {
  test.each([
    [["biuld"], 'gylebook has no command "biuld".', "did you mean build?"],
    [["frobnicate"], 'gylebook has no command "frobnicate".', "commands: check, build"],
    [["build", "--outt", "x"], "Unknown option '--outt'.", "usage: gylebook build [DIR]"],
    [["build", "--out"], "Option '--out <value>' argument missing.", "usage: gylebook build"],
    [["check", "a", "b"], `gylebook check doesn't take "b".`, "usage: gylebook check"],
    [["new", "batch"], "gylebook new needs more than it was given.", "usage: gylebook new log|batch|competition NAME"],
    [["new", "brew", "x"], 'gylebook new makes a log, a batch or a competition, not "brew".', "usage:"],
    [["check", "--format", "xml"], '--format expects one of text, json, github, found "xml".', ""],
    [["build", "--as-of", "yesterday"], '--as-of expects a date or a time such as 2026-06-20T12:00, found "yesterday".', ""],
    [["build", "--as-of", "2026-02-30"], '--as-of expects a date or a time such as 2026-06-20T12:00, found "2026-02-30".', ""],
    [["serve", "--port", "http"], '--port expects a number from 0 to 65535, found "http".', ""],
    [["serve", "--port", "70000"], '--port expects a number from 0 to 65535, found "70000".', ""],
    [["check", "no-such-folder"], "There is no folder no-such-folder.", "give the folder that holds batches/"],
  ])("%j", async (words, sentence, advice) => {
    const { exit, out, err } = await runCommand(words);
    expect(exit).toBe(2);
    expect(out).toBe("");
    expect(err).toContain(sentence);
    expect(err).toContain(advice);
    expect(err).not.toMatch(/\n\s+at /);
    expect(err.split("\n").length).toBeLessThanOrEqual(3);
  });
});

describe("help", () => {
  test("without a command names every command, on standard output", async () => {
    const { exit, out, err } = await runCommand([]);
    expect(exit).toBe(0);
    expect(err).toBe("");
    for (const { name, says } of COMMANDS) expect(out).toMatch(new RegExp(`^ +${name} +${says}$`, "m"));
  });

  test.each(COMMANDS.map(({ name }) => name))("%s --help says how it is called, and does nothing else", async (name) => {
    const folder = await emptyFolder();
    const { exit, out } = await runCommand([name, "--help"], { in: folder });
    expect(exit).toBe(0);
    expect(out).toMatch(new RegExp(`^usage: gylebook ${name}`));
  });

  test("fits a terminal of 100 columns", async () => {
    for (const { name } of COMMANDS) {
      const { out } = await runCommand([name, "--help"]);
      expect(Math.max(...out.split("\n").map((line) => line.length)), name).toBeLessThanOrEqual(100);
    }
  });

  test("--version prints the package's version alone", async () => {
    expect((await runCommand(["--version"])).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
