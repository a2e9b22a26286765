import { describe, expect, test } from "vitest";
import { privateFiles } from "../../src/site/index.js";
import { privateReportOf, recordText } from "../report-parts/plans.js";

const RECORD = `aim: {words: Louder zest, raise: [orange peel], hold: [bitterness], primary: orange peel}
samples: [{at: 2026-03-15 18:00, kept: kept-sample}]
package: {into: keg}
tastings:
  - {name: Before the cones, date: 2026-04-02, tasters: 7, samples: {flat: kept-sample, hopped: keg}, triangle: {}, pair: {attribute: orange peel}}
`;

function sheets(more = RECORD): Readonly<Record<string, string>> {
  const files = privateFiles({ report: privateReportOf({ "tp-03.md": recordText("TP-03", more) }) });
  return Object.fromEntries(files.map(({ path, render }) => [path, render()]));
}

/** What a reader sees: text without style, tags or comments. */
const textOf = (html = ""): string => html.replace(/<style>.*<\/style>/su, "").replaceAll(/<[^>]*>/gu, " ").replaceAll(/\s+/gu, " ");

describe("the sheets of a tasting", () => {
  test("one file each for the plan, the pourer, the tasters and the key, and a list of them", () => {
    expect(Object.keys(sheets())).toEqual(["index.html", "tasting-1-plan.html", "tasting-1-pouring.html", "tasting-1-ballots.html", "tasting-1-key.html"]);
  });

  test("one ballot a taster, with that taster's codes only, in the order of the pouring sheet", () => {
    const { tastings: [plan] } = privateReportOf({ "tp-03.md": recordText("TP-03", RECORD) });
    const ballots = (sheets()["tasting-1-ballots.html"] ?? "").split('<section class="paper">').slice(1).map(textOf);
    expect(ballots).toHaveLength(7);
    const every = plan?.rounds.flatMap(({ servings }) => servings.flatMap(({ cups }) => cups.map(({ code }) => code))) ?? [];
    ballots.forEach((ballot, place) => {
      const own = plan?.rounds.flatMap(({ servings }) => servings[place]?.cups.map(({ code }) => code) ?? []) ?? [];
      expect([...new Set(ballot.match(/\b\d{3}\b/gu))]).toEqual(own);
      expect(every.filter((code) => !own.includes(code) && ballot.includes(` ${code} `))).toEqual([]);
    });
  });

  test("a ballot names neither the samples, nor the batch, nor the tasting, nor what was meant", () => {
    const ballots = textOf(sheets()["tasting-1-ballots.html"]);
    for (const word of ["flat", "hopped", "kept-sample", "keg", "TP-03", "Tideline", "Before the cones", "Louder", "raise"]) expect(ballots).not.toContain(word);
    expect(ballots).toContain("orange peel");
  });

  test("the key holds each code with its sample, and a result that the record takes once the dots are filled in", () => {
    const key = sheets()["tasting-1-key.html"] ?? "";
    const { tastings: [plan] } = privateReportOf({ "tp-03.md": recordText("TP-03", RECORD) });
    for (const { servings } of plan?.rounds ?? []) {
      for (const { cups } of servings) for (const { code, sample } of cups) expect(textOf(key)).toContain(`${code} ${sample}`);
    }
    const [, yaml = ""] = /<pre>(- name[^<]*)<\/pre>/u.exec(key) ?? [];
    const filled = yaml.replaceAll("&quot;", "\"").replace("differs: [\u2026]", "differs: []").replace(/pair: \{attribute: orange peel, flat: …, hopped: …\}/u, "pair: {attribute: orange peel, flat: 1, hopped: 6}")
      .replace("correct: \u2026", "correct: 5").replace("flat: \u2026, hopped: \u2026, none: \u2026", "flat: 2, hopped: 4, none: 1").replace(/^ {2}scores:.*$/mu, "");
    expect(filled).not.toContain("\u2026");
    const record = RECORD.replace(/ {2}- \{name: Before[^\n]*\n/u, `${filled.split("\n").filter((line) => line.trim() !== "").map((line) => `  ${line}`).join("\n")}\n`);
    const { tastings } = privateReportOf({ "tp-03.md": recordText("TP-03", record) });
    // Nothing is planned any more: what comes now is a further tasting.
    expect(tastings.map(({ number }) => number)).toEqual([2]);
  });

  test("the plan cites each standard that it rests on, and calls the rest club practice", () => {
    const plan = textOf(sheets()["tasting-1-plan.html"]);
    for (const standard of ["ISO 4120", "ISO 5495", "ISO 10399", "ASTM E3009", "ASTM E1879", "ISO 13299", "Club practice"]) expect(plan).toContain(standard);
    for (const said of ["temperature", "volume", "glass", "carbonation", "colour", "crackers", "talking", "spit", "alcohol", "drives"]) expect(plan).toContain(said);
  });

  test("a ranking cites ISO 8587, and asks for an order", () => {
    const ranked = sheets("samples: [{kept: a}, {kept: b}, {kept: c}]\ntastings: [{tasters: 6, samples: {x: a, y: b, z: c}}]\n");
    expect(textOf(ranked["tasting-1-plan.html"])).toContain("ISO 8587");
    expect(textOf(ranked["tasting-1-ballots.html"])).toContain("Write 1 beside the one you like best");
  });

  test("a stranger's words are text on every sheet", () => {
    const hostile = RECORD.replaceAll("orange peel", '"<img src=x onerror=alert(1)>"').replace("Before the cones", '"</style><script>alert(2)</script>"').replace("flat:", '"<b>flat</b>":');
    for (const html of Object.values(sheets(hostile))) expect(html).not.toMatch(/<img|<script|<b>flat/u);
  });
});
