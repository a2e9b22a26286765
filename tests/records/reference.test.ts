import { describe, expect, test } from "vitest";
import { batchJsonSchema, competitionColumns, logFilesOf, parseLog, recordFields, slugOf, type RecordCache } from "../../src/records/index.js";

const RECORD = "---\ntitle: Tideline Pale\nbatch: TP-03\nbrewed: 2026-03-07\n---\n";

describe("the columns of a competition's files", () => {
  const columns = competitionColumns();
  const optional = (file: string): string[] => columns.filter((one) => one.file === `competitions/…/${file}` && !one.required).map(({ path }) => path);

  test("are told with what each holds", () => {
    expect(columns.filter(({ meaning }) => meaning === "").map(({ file, path }) => `${file} ${path}`)).toEqual([]);
  });

  test("have a sum to hold a sheet against, and a place with its decision", () => {
    expect(optional("scores.csv")).toContain("total");
    expect(optional("best-of-show.csv")).toEqual(["place", "decision"]);
  });
});

describe("the field reference", () => {
  const fields = recordFields();
  const field = (path: string, file = "batch"): (typeof fields)[number] | undefined => fields.find((one) => one.file === file && one.path === path);

  test("says what every field means, and shows a value for each that isn't a group", () => {
    expect(fields.filter(({ meaning }) => meaning === "").map(({ file, path }) => `${file} ${path}`)).toEqual([]);
    expect(fields.filter(({ example }) => example === undefined).map(({ file, path }) => `${file} ${path}`)).toEqual([]);
  });

  test("requires what the record format requires, and no more", () => {
    const required = fields.filter((one) => one.file === "batch" && one.required).map(({ path }) => path);
    expect(required.filter((path) => !path.includes("."))).toEqual(["title", "batch", "brewed"]);
  });

  test("names units, defaults and ranges", () => {
    expect(field("dry_hops[].amount")).toMatchObject({ unit: "mg, g, kg, oz, lb", required: false });
    expect(field("grist[].into")).toMatchObject({ default: "mash", range: "mash, kettle, fermenter" });
    expect(field("publish")).toMatchObject({ default: "true" });
    expect(field("agree_within", "competitions/…/index.md")).toMatchObject({ default: "7" });
    expect(field("<name>.boil_off", "equipment.yaml")).toMatchObject({ unit: "L/h, gal/h" });
    expect(field("tastings[].pair.<name>")).toMatchObject({ range: "0 to 1000" });
  });

  test("names each field once", () => {
    const names = fields.map(({ file, path }) => `${file} ${path}`);
    expect(names.filter((name, index) => names.indexOf(name) < index)).toEqual([]);
  });

  test("shows examples that the reader itself accepts", () => {
    const top = fields.filter((one) => one.file === "batch" && /^[a-z_]+$/u.test(one.path) && !["title", "batch", "brewed", "equipment", "repeats", "enter", "fermentation", "tastings"].includes(one.path));
    for (const { path, example } of top) {
      const { problems } = parseLog(logFilesOf({ "batches/a.md": RECORD.replace("\n---\n", `\n${path}: ${example ?? ""}\n---\n`) }));
      expect(problems.map(({ field: where, expected, found }) => `${where}: ${expected}, ${found}`)).toEqual([]);
    }
  });
});

describe("the JSON Schema of a record", () => {
  const schema = batchJsonSchema() as { required: string[]; properties: Record<string, Record<string, unknown>> };

  test("requires three fields and knows no others than the reader", () => {
    expect(schema).toMatchObject({ type: "object", additionalProperties: false, required: ["title", "batch", "brewed"] });
    expect(Object.keys(schema.properties)).toEqual(recordFields().filter(({ file, path }) => file === "batch" && /^[a-z_]+$/u.test(path)).map(({ path }) => path));
  });

  test("has patterns that editors can compile, and that tell a unit from none", () => {
    const patterns = [...JSON.stringify(schema).matchAll(/"pattern":("(?:[^"\\]|\\.)*")/gu)].map(([, text = ""]) => new RegExp(JSON.parse(text) as string, "u"));
    expect(patterns.length).toBeGreaterThan(50);
    const { fermenter } = schema.properties as unknown as { fermenter: { properties: Record<string, { pattern: string }> } };
    const volume = new RegExp(fermenter.properties["volume"]?.pattern ?? "^$", "u");
    expect(["22.4 L", "19.2 L at 3 C", "19.4 L ± 0.1 L", "5 gal"].every((text) => volume.test(text))).toBe(true);
    expect(["22.4", "22,4 L", "22.4 g", "22.4 l"].some((text) => volume.test(text))).toBe(false);
  });

  test("leaves out what only the help pages use", () => {
    expect(JSON.stringify(schema)).not.toMatch(/"(?:expects|holds|choices|example)":/u);
  });
});

describe("reading a log again", () => {
  const files = {
    "batches/a/index.md": RECORD.replace("\n---\n", "\nfermentation: {log: a.csv}\ntastings: [{samples: {x: keg, y: keg}, scores: s.csv}]\n---\n"),
    "batches/a/a.csv": "time,temperature [C]\n2026-03-08 10:00,18\n", "batches/a/s.csv": "taster,sample,attribute,score\nT1,x,pine,4\n",
    "batches/b.md": RECORD.replace("TP-03", "TP-04").replace("03-07", "03-08"),
    "shared/club.yaml": "zone: Europe/London\n", "shared/competitions/c/index.md": "---\nname: C\ndate: 2026-09-12\n---\n",
  };

  test("with the same cache gives unchanged records back as the same objects", () => {
    const cache: RecordCache = new Map();
    const first = parseLog(logFilesOf(files), cache).log;
    const again = parseLog(logFilesOf({ ...files, "batches/b.md": `${files["batches/b.md"]}Notes.\n` }), cache).log;
    expect(again.batches[0]).toBe(first.batches[0]);
    expect(again.competitions[0]).toBe(first.competitions[0]);
    expect(again.equipment).toBe(first.equipment);
    expect(again.batches[1]).not.toBe(first.batches[1]);
    expect(again.batches[1]?.body).toBe("Notes.\n");
  });

  test.each([
    ["its log", { "batches/a/a.csv": "time,temperature [C]\n2026-03-08 10:00,19\n" }],
    ["its scores", { "batches/a/s.csv": "taster,sample,attribute,score\nT1,x,pine,5\n" }],
    ["the club's zone", { "shared/club.yaml": "zone: America/New_York\n" }],
  ])("gives another record where %s changed", (_, change) => {
    const cache: RecordCache = new Map();
    const first = parseLog(logFilesOf(files), cache).log;
    const again = parseLog(logFilesOf({ ...files, ...change }), cache).log;
    expect(again.batches[0]).not.toBe(first.batches[0]);
    expect(again.batches[0]).not.toEqual(first.batches[0]);
  });

  test("with bytes compares them by value", () => {
    const cache: RecordCache = new Map();
    const bytes = (): Record<string, Uint8Array> => Object.fromEntries(Object.entries(files).map(([path, text]) => [path, new TextEncoder().encode(text)]));
    expect(parseLog(logFilesOf(bytes()), cache).log.batches[0]).toBe(parseLog(logFilesOf(bytes()), cache).log.batches[0]);
  });
});

test.each([["TP-03", "tp-03"], ["No. 7 / b", "no-7-b"], ["Kölsch 3", "kolsch-3"], ["Бочка 2", "бочка-2"], ["--x--", "x"], ["🍺", ""]])("batch %s has the page name %s", (batch, slug) => {
  expect(slugOf(batch)).toBe(slug);
});
