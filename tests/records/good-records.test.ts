import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { formatProblems } from "../../src/problems/index.js";
import { logFilesOf, parseLog, readLogFolder, type Batch, type Log } from "../../src/records/index.js";

const REQUIRED = "---\ntitle: Tideline Pale\nbatch: TP-03\nbrewed: 2026-03-07\n---\n";

function onlyBatch(log: Log): Batch {
  const [first] = log.batches;
  if (first === undefined) throw new Error("the log has no batch");
  return first.data;
}

/** A batch from the front matter below the three required fields. */
function batchOf(fields: string): Batch {
  const { log, problems } = parseLog(logFilesOf({ "batches/a.md": REQUIRED.replace("\n---\n", `\n${fields}---\n`) }));
  expect(formatProblems(problems, "text")).toBe("No problems.");
  return onlyBatch(log);
}

describe("the whole record of the record format", () => {
  const { log, problems } = parseLog(readLogFolder(join(import.meta.dirname, "good", "whole-record")));
  const record = log.batches.find(({ slug }) => slug === "tp-03");

  test("has no problem", () => {
    expect(formatProblems(problems, "text")).toBe("No problems.");
    expect(log.broken).toEqual([]);
  });

  test("keeps what was written, in the unit it was written in, beside its worth", () => {
    expect(record?.data.fermenter?.gravity).toEqual({ kind: "gravity", value: 1.0495, unit: "SG", text: "1.0495" });
    expect(record?.data.transfer?.[0]?.volume).toEqual({ kind: "volume", value: 19, unit: "L", text: "19.0 L at 2 C ± 0.1 L", limit: 0.1, atC: 2 });
    expect(record?.data.grist?.[0]?.amount).toMatchObject({ value: 4600, unit: "kg", text: "4.60 kg" });
  });

  test("reads one value and a range alike", () => {
    expect(record?.data.plan?.dryHopTemperature).toMatchObject({ low: { value: 12 }, high: { value: 14 }, single: false });
    expect(record?.data.plan?.dryHopFor).toMatchObject({ low: { value: 96 }, high: { value: 96 }, single: true });
  });

  test("keeps dates civil", () => {
    expect(record?.data.brewed).toEqual({ text: "2026-03-07", date: "2026-03-07" });
    expect(record?.data.yeast?.pitched).toEqual({ text: "2026-03-07 16:00", date: "2026-03-07", time: "16:00" });
  });

  test("reads the log, gaps as gaps, and the hour that summer time skips as no time at all", () => {
    const [fermentation] = record?.logs ?? [];
    expect(fermentation?.temperatureC).toEqual([18, 18.6, undefined, 2.1, 2.1]);
    // Clocks went forward at 01:00 UTC on 29 March 2026: 00:30 GMT to 02:30 BST is one hour.
    expect((fermentation?.timesMs[4] ?? 0) - (fermentation?.timesMs[3] ?? 0)).toBe(3_600_000);
    expect(fermentation?.timesMs[0]).toBe(Date.parse("2026-03-07T16:00Z"));
  });

  test("reads tastings with their files", () => {
    const tasting = record?.data.tastings?.[0];
    expect(tasting?.samples).toEqual([{ sample: "before", value: "control" }, { sample: "after", value: "keg" }]);
    expect(tasting?.pair).toEqual([{ attribute: "orange peel", counts: [{ sample: "after", count: 10 }, { sample: "before", count: 2 }] }]);
    expect(tasting?.preference).toEqual({ counts: [{ sample: "before", count: 3 }, { sample: "after", count: 8 }], none: 1 });
    expect(record?.tastings[0]?.scores?.[1]).toEqual({ taster: "T1", sample: "after", attribute: "orange peel", score: 6.5, serving: 1 });
    expect(record?.tastings[0]?.ranking?.[3]).toEqual({ taster: "T2", sample: "after", rank: 1.5 });
  });

  test("finds the photos of the notes, and where fields stand", () => {
    expect(record?.photos).toEqual([{ written: "krausen.jpg", file: "batches/2026-03-tideline-3/krausen.jpg", alt: "High krausen on day two", line: expect.any(Number) as number }]);
    expect(record?.placeOf("dry_hops[0].amount")).toEqual({ line: 76, column: 13 });
    expect(record?.placeOf("dry_hops[1].amount")).toBeUndefined();
  });

  test("reads equipment and club", () => {
    expect(log.club).toMatchObject({ name: "Saltings Homebrewers", zone: "Europe/London", units: "metric", asOf: { date: "2026-10-20", time: "12:00" } });
    const equipment = log.equipment.get("quayside-40");
    expect(equipment?.readings?.hydrometer?.within).toMatchObject({ value: 0.001, unit: "SG" });
    expect(equipment?.readings?.thermometer?.within).toMatchObject({ value: 0.3, unit: "C" });
    expect(equipment?.fermenter?.vacuum?.value).toBe(20);
  });
});

describe("a record", () => {
  test("with only its required fields has no problem and only those fields", () => {
    expect(batchOf("")).toEqual({
      title: "Tideline Pale", batch: "TP-03", brewed: { text: "2026-03-07", date: "2026-03-07" }, publish: true,
    });
  });

  test("tells absent from none", () => {
    expect(batchOf("dry_hops: []\n").dryHops).toEqual([]);
    expect(batchOf("")).not.toHaveProperty("dryHops");
  });

  test("may write one move, one package, one log, or a list of them", () => {
    expect(batchOf("transfer: {volume: 19 L}\n").transfer).toHaveLength(1);
    expect(batchOf("package:\n  - {into: keg, volume: 15 L}\n  - {into: bottles, volume: 3 L, count: 6}\n").package).toMatchObject([{ into: "keg" }, { into: "bottles", count: 6 }]);
  });

  test("keeps a number as its text where text is asked for, and 12:30 as it is", () => {
    const files = { "batches/a.md": "---\ntitle: 2026\nbatch: 007\nbrewed: 2026-03-07\nseason: 12:30\n---\n" };
    expect(onlyBatch(parseLog(logFilesOf(files)).log)).toMatchObject({ title: "2026", batch: "007", season: "12:30" });
  });

  test("takes a mass or a volume where either is right", () => {
    expect(batchOf("yeast: {amount: 100 mL}\n").yeast?.amount).toMatchObject({ kind: "volume", value: 0.1 });
    expect(batchOf("yeast: {amount: 11 g}\n").yeast?.amount).toMatchObject({ kind: "mass", value: 11 });
  });

  test("may end its lines as Windows does", () => {
    const { log, problems } = parseLog(logFilesOf({ "batches/a.md": `${REQUIRED}Notes\nmore\n`.replaceAll("\n", "\r\n") }));
    expect(problems).toEqual([]);
    expect(log.batches[0]?.body).toBe("Notes\nmore\n");
    expect(log.batches[0]?.bodyLine).toBe(6);
  });

  test("may hold a rule of hyphens in its notes", () => {
    expect(parseLog(logFilesOf({ "batches/a.md": `${REQUIRED}One\n\n---\n\nTwo\n` })).log.batches[0]?.body).toBe("One\n\n---\n\nTwo\n");
  });

  test("is listed in order of brew date, then number", () => {
    const record = (batch: string, brewed: string): string => `---\ntitle: T\nbatch: ${batch}\nbrewed: ${brewed}\n---\n`;
    const { log } = parseLog(logFilesOf({
      "batches/a.md": record("B-2", "2026-03-07"), "batches/b.md": record("B-1", "2026-03-07"), "batches/c.md": record("B-9", "2026-01-07"),
    }));
    expect(log.batches.map(({ data }) => data.batch)).toEqual(["B-9", "B-1", "B-2"]);
  });

  test("that is broken leaves the others", () => {
    const files: Record<string, string> = { "batches/broken.md": "---\ntitle: T\nbatch: B-0\nbrewed: soon\n---\n" };
    for (let number = 1; number < 20; number += 1) files[`batches/b${number}.md`] = `---\ntitle: T\nbatch: B-${number}\nbrewed: 2026-03-07\n---\n`;
    const { log, problems } = parseLog(logFilesOf(files));
    expect(log.batches).toHaveLength(19);
    expect(log.broken).toEqual([{ file: "batches/broken.md", batch: "B-0", publish: true }]);
    expect(problems).toHaveLength(1);
  });

  test("can't be repaired by the names JavaScript knows", () => {
    const { problems } = parseLog(logFilesOf({ "batches/a.md": REQUIRED.replace("\n---\n", "\nconstructor: 1\ntoString: 2\n---\n") }));
    expect(problems.map(({ code, field }) => [code, field])).toEqual([["record/field-unknown", "constructor"], ["record/field-unknown", "toString"]]);
    expect(parseLog(logFilesOf({ "batches/a.md": REQUIRED.replace("\n---\n", "\nstyle: constructor\nequipment: toString\n---\n") })).problems.map(({ code }) => code))
      .toEqual(["record/style-unknown", "record/equipment-unknown"]);
  });
});

describe("defaults", () => {
  const { log } = parseLog(logFilesOf({ "batches/a.md": REQUIRED, "shared/hops.yaml": "Cascade: {alpha: 5.5 %}\n" }));

  test("of styles are those of the published guidelines", () => {
    // BJCP Beer Style Guidelines 2021, 18B: OG 1.045–1.060, FG 1.010–1.015, ABV 4.5–6.2 %, IBU 30–50, SRM 5–10.
    expect(log.styles.get("American Pale Ale")).toMatchObject({
      code: "18B", status: "published", originalGravity: { low: { value: 1.045 }, high: { value: 1.06 } },
      finalGravity: { low: { value: 1.01 }, high: { value: 1.015 } }, abv: { low: { value: 4.5 }, high: { value: 6.2 } }, bitterness: { low: 30, high: 50 },
    });
    expect(log.styles.get("American Pale Ale")?.color?.high.value).toBeCloseTo(10 * (25 / 12.7), 9);
    expect(log.styles.size).toBe(105);
  });

  test("of a hop are the mean of its published range where no mean is published", () => {
    // Hop Growers of America: Chinook alpha 12–14 %, oil 1.7–2.7 mL/100 g.
    expect(log.hops.get("Chinook")).toMatchObject({ alpha: { value: 13 }, oil: { value: 2.2 }, status: "published" });
    expect(log.hops.get("Sterling")?.status).toBe("from memory");
  });

  test("give way to the log's own, whole", () => {
    expect(log.hops.get("Cascade")).toMatchObject({ alpha: { value: 5.5 }, source: "shared/hops.yaml", status: "own" });
    expect(log.hops.get("Cascade")).not.toHaveProperty("oil");
  });

  test("of sugars hold no water to take off twice", () => {
    expect(log.malts.get("Sucrose (cane/beet)")).toMatchObject({ extract: { value: 100 }, moisture: { value: 0 }, color: { value: 0 } });
    // J. Palmer, How to Brew, table 9: two-row pale malt 80 %.
    expect(log.malts.get("2-row lager/pale malt")).toMatchObject({ extract: { value: 80 }, moisture: { value: 4 } });
  });
});

describe("a broken record that isn't to be published", () => {
  test("says so, so that no page names it", () => {
    const files = { "batches/quiet.md": "---\ntitle: T\nbatch: B-9\nbrewed: soon\npublish: false\n---\n" };
    expect(parseLog(logFilesOf(files)).log.broken).toEqual([{ file: "batches/quiet.md", batch: "B-9", publish: false }]);
  });
});
