import { describe, expect, it } from "vitest";
import { siteFiles } from "../../src/site/index.js";
import { rendered, sampleInputs } from "./sample-site.js";
import { competitionLog, reportAt } from "../report/competition-log.js";

const RECORD = `---
title: Kelp & <b>Peel</b>
batch: TP-01
brewed: 2026-08-01
brewer: quayside
style: American Pale Ale
grist:
  - {malt: Pale malt, amount: 4.5 kg}
  - {malt: Wheat malt, amount: 500 g}
fermenter: {gravity: 1.050 ± 0.001}
additions:
  - {what: Orange peel, amount: 20 g, at: 2026-08-10}
package:
  - {into: keg, date: 2026-08-29, carbonation: 2.4 vol}
enter:
  - {competition: cup, declare: [orange peel], allergens: [barley]}
---
Meant to smell of the harbour.
`;

function notesPage(record: string): string {
  const log = competitionLog({ entries: "entry\nE1\n", batches: { "one.md": record } });
  return rendered(siteFiles(sampleInputs(reportAt(log, "2026-09-01"))), "batches/tp-01-entry.html");
}

/** The page's words in order; tags that run on in the text leave no gap. */
function wordsOf(html: string): string {
  return html.replaceAll(/<\/?(?:b|bdi|i|span|a)\b[^>]*>/gu, "").replaceAll(/<[^>]+>/gu, " ").replaceAll(/[\s\u00A0\u2009\u202F]+/gu, " ");
}

describe("the entry notes of a batch", () => {
  const html = notesPage(RECORD);
  const text = wordsOf(html);

  it("name the style, the figures with how each came about, and the age on the day", () => {
    expect(text).toContain("Entered as American Pale Ale. On the day 14 days in the package.");
    // American Pale Ale, original gravity 1.045 to 1.060: BJCP guidelines 2021, 18B.
    expect(text).toMatch(/Original gravity 1\.050. ± 0\.0012 measured 1\.045 to 1\.060 inside/u);
  });

  it("say what to declare, and which allergen the recipe points to and the record doesn't list", () => {
    expect(text).toContain("Declare: orange peel.");
    expect(text).toContain("Contains barley. The recipe also points to wheat: list it");
  });

  it("hold a check list for the bottles, the brewer's words, and cautions beside them", () => {
    for (const words of ["Filled from the keg", "asked for 2.40 vol, not measured", "Meant to smell of the harbour.", "A bottle is a vessel under pressure"]) expect(text).toContain(words);
  });

  it("keep a title's marks from becoming markup", () => {
    expect(html).not.toContain("<b>Peel</b>");
  });

  it("aren't made for a batch that enters no competition", () => {
    expect(() => notesPage(RECORD.replace(/^enter:\n.*\n/mu, ""))).toThrow("has no batches/tp-01-entry.html");
  });
});
