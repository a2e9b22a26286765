import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "csv-parse/sync";
import { emptyFolder, runCommand } from "./stand-in.js";

const FILES: Readonly<Record<string, string>> = {
  "batches/one.md": "---\ntitle: Pale\nbatch: TP-01\nbrewed: 2026-03-01\nbrewer: quayside\npackage: {date: 2026-03-20, into: keg}\nenter: [{competition: cup}]\n---\n",
  "batches/two.md": "---\ntitle: Moonless\nbatch: QP-77\nbrewed: 2026-03-01\nbrewer: moonbrewer\npublish: false\nenter: [{competition: cup}]\n---\n",
  "shared/competitions/cup/index.md": "---\nname: Cup\ndate: 2026-09-12\nrelease: 2026-09-13 18:00\nfeedback: public\nhandles: shown\nsheet: {smell: 30, taste: 70}\n---\nA day in the loft, gullswept.\n",
  "shared/competitions/cup/entries.csv": "entry,code,flight,brewer,title,batch\nREG-1,417,Amberflight,quayside,Pale,TP-01\nREG-2,532,Amberflight,moonbrewer,Moonless,QP-77\nREG-3,268,Amberflight,driftwoodian,Sandbar,\n",
  "shared/competitions/cup/judges.csv": "judge,brewer,flights\nJUDGE-7,,Amberflight\nJUDGE-8,,Amberflight\n",
  "shared/competitions/cup/scores.csv": "flight,judge,code,smell,taste,comment,comment_smell\nAmberflight,JUDGE-7,417,21.375,55,kelpish remark,zesty remark\nAmberflight,JUDGE-7,532,20,54,moonish remark,\nAmberflight,JUDGE-7,268,19,53,,\nAmberflight,JUDGE-8,417,21,55,,\nAmberflight,JUDGE-8,532,20,52,,\nAmberflight,JUDGE-8,268,19,51,,\n",
  "shared/competitions/cup/finals.csv": "flight,code,score,place,decision\nAmberflight,417,76.125,1,\nAmberflight,532,74.625,2,\nAmberflight,268,72.875,3,\n",
  "shared/competitions/cup/best-of-show.csv": "judge,code,rank\nJUDGE-7,417,1\nJUDGE-7,268,2\n",
};

/** Scores, comments, codes, flights, judges, registration ids, and brewers who are named nowhere else. */
const RESULTS = ["21.375", "76.125", "72.875", "kelpish", "zesty", "gullswept", "Amberflight", "JUDGE-7", "REG-1", "REG-3", "driftwoodian", "Sandbar", "Best of show"];
/** What belongs to the batch that isn't published. */
const HIDDEN = ["QP-77", "qp-77", "Moonless", "moonbrewer", "moonish", "74.625"];

async function site(asOf: string): Promise<Map<string, string>> {
  const log = await emptyFolder();
  for (const [name, text] of Object.entries(FILES)) {
    await mkdir(path.dirname(path.join(log, name)), { recursive: true });
    await writeFile(path.join(log, name), text);
  }
  const { exit, err } = await runCommand(["build", log, "--out", path.join(log, "_site"), "--as-of", asOf], { in: log });
  expect({ exit, err }).toMatchObject({ exit: 0 });
  return filesOf(path.join(log, "_site"));
}

async function filesOf(out: string): Promise<Map<string, string>> {
  const names = (await readdir(out, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile()).map((entry) => path.relative(out, path.join(entry.parentPath, entry.name)));
  return new Map(await Promise.all(names.map(async (name) => [name, await readFile(path.join(out, name), "latin1")] as const)));
}

const holding = (files: ReadonlyMap<string, string>, word: string): string[] =>
  [...files].filter(([name, text]) => name.includes(word) || (!name.startsWith("assets") && text.includes(word))).map(([name]) => name);

describe("a site built before the release", () => {
  test("holds no score, place, comment, code, judge, registration id or brewer in any byte of any file", async () => {
    const files = await site("2026-09-13T17:59");
    expect(files.has("index.html")).toBe(true);
    for (const word of [...RESULTS, ...HIDDEN]) expect(holding(files, word), word).toEqual([]);
    // Three digits may stand in a figure by chance: codes are looked for as text of their own.
    for (const code of ["417", "532", "268"]) expect([...files].filter(([name, text]) => name.endsWith("html") && new RegExp(`>\\s*${code}\\s*<`, "u").test(text)), code).toEqual([]);
    expect([...files.keys()].filter((name) => name.startsWith(path.join("competitions", "cup")))).toEqual([]);
  }, 120_000);
});

describe("a site built after the release", () => {
  test("holds the results, and still nothing of a batch that isn't published", async () => {
    const files = await site("2026-09-13T18:00");
    for (const word of RESULTS) expect(holding(files, word), word).not.toEqual([]);
    for (const word of HIDDEN) expect(holding(files, word), word).toEqual([]);
    expect(files.get(path.join("batches", "tp-01.html"))).toContain("First in flight Amberflight");
  }, 120_000);
});

describe("the demo, built before its cup's results are released", () => {
  const root = path.resolve(import.meta.dirname, "..", "..");
  const cup = path.join(root, "shared", "competitions", "2026-tideline-cup");
  const table = async (name: string): Promise<readonly Readonly<Record<string, string>>[]> => parse(await readFile(path.join(cup, name)), { columns: true });
  /** The longest stretch of a text that no file format writes otherwise. */
  const plainest = (text: string): string => (text.match(/[\w ,.]+/g) ?? []).reduce((longest, stretch) => stretch.length > longest.length ? stretch : longest, "").trim();

  test("says nothing that was written about an entry, and has no page of the cup", async () => {
    const out = path.join(await emptyFolder(), "_site");
    expect((await runCommand(["build", root, "--out", out, "--as-of", "2026-07-13T17:59"])).exit).toBe(0);
    const files = await filesOf(out);
    const [scores, finals, entries] = await Promise.all(["scores.csv", "finals.csv", "entries.csv"].map(table));
    const words = [...scores ?? [], ...finals ?? []].flatMap(({ comment = "", comment_aroma = "", comment_flavor = "", decision = "" }) => [comment, comment_aroma, comment_flavor, decision]).map(plainest).filter((text) => text.length >= 15);
    expect(words.length).toBeGreaterThan(50);
    expect(words.flatMap((word) => holding(files, word).map((file) => `${file}: ${word}`))).toEqual([]);
    // Beers and brewers of other clubs stand nowhere but in the entries.
    const guests = (entries ?? []).filter(({ batch }) => batch === "").map(({ title = "" }) => title);
    expect(guests.length).toBeGreaterThan(3);
    expect(guests.flatMap((guest) => holding(files, guest).map((file) => `${file}: ${guest}`))).toEqual([]);
    expect([...files.keys()].filter((name) => name.includes("tideline-cup"))).toEqual([]);
  }, 120_000);
});
