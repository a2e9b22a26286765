import { describe, expect, it } from "vitest";
import { logFilesOf, parseLog } from "../../src/records/index.js";
import type { CandidateReport } from "../../src/report/index.js";
import { reportAt } from "./competition-log.js";

// A style of the test's own, original gravity alone: 1.044 to 1.050. A hydrometer trusted to 0.001 leaves ±0.0012 open at 95 % (2 · 0.001/√3).
const STYLES = "Harbour Pale:\n  original_gravity: 1.044 to 1.050\n";

interface Beer {
  readonly gravity?: string;
  readonly packaged?: string;
  readonly more?: string;
}

const inKeg = (date: string): string => `package:\n  - {into: keg, date: ${date}}\n`;

function recordOf(batch: string, { gravity, packaged = "2026-08-29", more = "" }: Beer): string {
  const fermenter = gravity === undefined ? "" : `fermenter: {gravity: ${gravity} ± 0.001}\n`;
  return `---\ntitle: Beer ${batch}\nbatch: ${batch}\nbrewed: 2026-08-01\nbrewer: quayside\nstyle: Harbour Pale\n${fermenter}${inKeg(packaged)}${more}---\n`;
}

/** The candidates of the one brewer for a cup on 12 September 2026. */
function candidates(beers: Readonly<Record<string, Beer>>): readonly CandidateReport[] {
  const { log, problems } = parseLog(logFilesOf({
    "shared/styles.yaml": STYLES,
    "shared/competitions/cup/index.md": "---\nname: Cup\ndate: 2026-09-12\n---\n",
    ...Object.fromEntries(Object.entries(beers).map(([batch, beer]) => [`batches/${batch.toLowerCase()}.md`, recordOf(batch, beer)])),
  }));
  const errors = problems.filter(({ severity }) => severity === "error");
  if (errors.length > 0) throw new Error(errors.map(({ file, line, expected, found }) => `${file}:${String(line)} ${expected}, found ${found}`).join("\n"));
  const [coming] = reportAt(log, "2026-09-01").coming;
  return coming?.brewers.find(({ brewer }) => brewer === "quayside")?.candidates ?? [];
}

describe("which batch to enter", () => {
  it("counts each figure inside, outside or on the line, with what its reading can be off by", () => {
    const counts = candidates({ "TP-01": { gravity: "1.047" }, "TP-02": { gravity: "1.0505" }, "TP-03": { gravity: "1.060" }, "TP-04": { gravity: "1.0495" } })
      .map(({ batch, inside, onLine, outside }) => [batch, inside, onLine, outside]);
    expect(counts.toSorted()).toEqual([["TP-01", 1, 0, 0], ["TP-02", 0, 1, 0], ["TP-03", 0, 0, 1], ["TP-04", 0, 1, 0]]);
  });

  it("puts the fewest figures outside the style first, however old, and says so", () => {
    const [first, second] = candidates({ "TP-01": { gravity: "1.060", packaged: "2026-09-01" }, "TP-02": { gravity: "1.047", packaged: "2026-08-20" } });
    expect([first?.batch, second?.batch]).toEqual(["TP-02", "TP-01"]);
    expect(first?.why).toBe("Before TP-01: no figure outside the style against 1.");
    expect(second?.why).toBe("Nothing stands behind it.");
  });

  it("then the fresher by whole days since packaging on the day of the competition", () => {
    const [first, second] = candidates({ "TP-01": { gravity: "1.047", packaged: "2026-08-20" }, "TP-02": { gravity: "1.047", packaged: "2026-08-29" } });
    // 29 August to 12 September: 14 days; 20 August: 23.
    expect([[first?.batch, first?.daysOld], [second?.batch, second?.daysOld]]).toEqual([["TP-02", 14], ["TP-01", 23]]);
    expect(first?.why).toBe("Before TP-01: as far inside the style, and fresher by 9 days.");
  });

  it("and nothing but the number where nothing separates two", () => {
    const [first] = candidates({ "TP-02": { gravity: "1.047" }, "TP-01": { gravity: "1.047" } });
    expect(first?.batch).toBe("TP-01");
    expect(first?.why).toBe("Before TP-02: nothing separates the two but their numbers.");
  });

  it("leaves out what is packaged after the day, not packaged at all, or dumped", () => {
    const listed = candidates({ "TP-01": { gravity: "1.047" }, "TP-02": { gravity: "1.047", packaged: "2026-09-13" }, "TP-03": { gravity: "1.047", more: "status: dumped\n" } });
    expect(listed.map(({ batch }) => batch)).toEqual(["TP-01"]);
  });

  it("says which batch the record enters, and holds it against the style it is entered as", () => {
    const [entered] = candidates({ "TP-01": { gravity: "1.047", more: "enter: [{competition: cup, style: Kölsch}]\n" } });
    expect(entered).toMatchObject({ entered: true, style: "Kölsch", inside: 1 });
    expect(entered?.styleRows.find(({ figure }) => figure === "original-gravity")).toMatchObject({ low: 1.044, high: 1.05, basis: "measured" });
  });
});
