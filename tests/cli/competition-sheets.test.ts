import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import jsQR from "jsqr";
import { describe, expect, test } from "vitest";
import { qrPath } from "../../src/site/private/qr-path.js";
import { emptyFolder, runCommand } from "./stand-in.js";

const CUP = "shared/competitions/cup";
const FILES: Readonly<Record<string, string>> = {
  "batches/one.md": "---\ntitle: Moonless Pale\nbatch: TP-01\nbrewed: 2026-03-01\nbrewer: quayside\n---\n",
  [`${CUP}/index.md`]: "---\nname: Cup\ndate: 2026-09-12\nseed: harbour\nsheet: {smell: 30, taste: 70}\n---\n",
  [`${CUP}/entries.csv`]: "entry,code,flight,style,brewer,title,batch\nR1,417,A,Best Bitter,quayside,Moonless Pale,TP-01\nR2,532,A,Best Bitter,mudlark,\"Gold, \"\"late\"\"\",\n",
  [`${CUP}/judges.csv`]: "judge,brewer,flights\nJ1,,\nJ2,,\n",
};

async function sheets(name: string, more: Readonly<Record<string, string>> = {}): Promise<{ exit: number; err: string; files: Map<string, string> }> {
  const log = await emptyFolder();
  for (const [file, text] of Object.entries({ ...FILES, ...more })) {
    await mkdir(path.dirname(path.join(log, file)), { recursive: true });
    await writeFile(path.join(log, file), text);
  }
  const { exit, err } = await runCommand(["sheets", name, log], { in: log });
  const folder = path.join(log, "_private", name.toLowerCase());
  const names = exit === 0 ? await readdir(folder) : [];
  return { exit, err, files: new Map(await Promise.all(names.map(async (file) => [file, (await readFile(path.join(folder, file), "utf8")).replaceAll(/<style>[\s\S]*?<\/style>/gu, "")] as const))) };
}

describe("sheets of a competition", () => {
  test("are a score sheet a judge and entry with its own sections, and nothing on them or the labels that names a brewer", async () => {
    const { files } = await sheets("cup");
    const scores = files.get("score-sheets-a-1.html") ?? "";
    expect(scores.match(/Score sheet of judge/gu)).toHaveLength(4);
    for (const text of ["Cup 417", "Cup 532", "of 30", "of 70", "of 100"]) expect(scores).toContain(text);
    for (const name of ["score-sheets-a-1.html", "cup-labels.html", "flight-summaries.html", "best-of-show.html"]) {
      for (const word of ["quayside", "mudlark", "Moonless", "TP-01", "R1", "R2"]) expect(files.get(name), `${name} ${word}`).not.toContain(word);
    }
    expect(files.get("registrar.html")).toContain("quayside");
  });

  test("give each entry's feedback where it isn't public, one file an entry", async () => {
    const scores = { [`${CUP}/scores.csv`]: "flight,judge,code,smell,taste,comment\nA,J1,417,20,50,kelpish\nA,J1,532,21,40,zesty\n" };
    const { files } = await sheets("cup", scores);
    expect(files.get("feedback-r1.html")).toContain("kelpish");
    expect(files.get("feedback-r1.html")).not.toContain("zesty");
    const open = await sheets("cup", { ...scores, [`${CUP}/index.md`]: (FILES[`${CUP}/index.md`] ?? "").replace("seed:", "feedback: public\nseed:") });
    expect([...open.files.keys()].filter((name) => name.startsWith("feedback"))).toEqual([]);
  });

  test("are refused, exit 1, where a flight can't be judged fairly", async () => {
    const { exit, err } = await sheets("cup", { [`${CUP}/judges.csv`]: "judge,brewer,flights\nJ1,quayside,\nJ2,,\n" });
    expect(exit).toBe(1);
    expect(err).toContain("[competition/assignment-impossible]");
    expect(err).toContain("J1 (R1)");
  });
});

describe("bottle slips", () => {
  test("carry the registration id and its code, and nothing that says whose it is", async () => {
    const slips = (await sheets("TP-01")).files.get("bottle-slips.html") ?? "";
    const each = [...slips.matchAll(/<div class="slip keep">[\s\S]*?<\/div><\/div>/gu)].map(([slip]) => slip);
    expect(each).toHaveLength(8);
    for (const slip of each) {
      expect(slip).toContain("R1");
      for (const word of ["quayside", "Moonless", "TP-01", "417"]) expect(slip).not.toContain(word);
    }
    expect(slips).toContain("100 mm");
  });

  test("scan as the competition and the registration id", () => {
    const { path: drawn, size } = qrPath("cup R1");
    const scale = 4;
    const pixels = new Uint8ClampedArray((size * scale) ** 2 * 4).fill(255);
    for (const [, x, y] of drawn.matchAll(/M(\d+) (\d+)h/gu)) {
      for (let row = 0; row < scale; row += 1) for (let column = 0; column < scale; column += 1) pixels.fill(0, 4 * ((Number(y) * scale + row) * size * scale + Number(x) * scale + column), 4 * ((Number(y) * scale + row) * size * scale + Number(x) * scale + column) + 3);
    }
    expect((jsQR as unknown as (data: Uint8ClampedArray, width: number, height: number) => { data: string } | null)(pixels, size * scale, size * scale)?.data).toBe("cup R1");
  });
});
