import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { Figure } from "../../src/site/components/figure.js";
import { PageContextProvider } from "../../src/site/page/page-context.js";
import { sampleLog } from "./sample-report.js";
import { rendered, sampleSite } from "./sample-site.js";

/** Text of a figure on a page whose club uses one unit system. */
const figure = (units: "metric" | "us", props: Parameters<typeof Figure>[0]): string =>
  renderToString(h(PageContextProvider, { value: { path: "batches/tp-03.html", units, methods: new Map() } }, h(Figure, props)));
const words = (html: string): string => html.replaceAll(/<[^>]*>/gu, "").replaceAll("\u00A0", " ");

describe("a figure", () => {
  // Conversions by definition: 1 US gal = 3.785411784 L, 0 °C = 32 °F; rounding as GUM 7.2.6 allows.
  it("is rounded to what its uncertainty supports and carries its unit, the other system in brackets", () => {
    expect(words(figure("metric", { value: 18.5992, unit: "L", plusMinus: 0.29 }))).toBe("18.60 ± 0.29 L (4.91 ± 0.08 gal)");
    expect(words(figure("us", { value: 18.5992, unit: "L", plusMinus: 0.29 }))).toBe("4.91 ± 0.08 gal (18.60 ± 0.29 L)");
    expect(words(figure("metric", { value: 5.09, unit: "%", plusMinus: 0.21 }))).toBe("5.09 ± 0.21 %");
  });

  it("of a plan is a band where the plan gives one, set in italics, and says so where asked", () => {
    const html = figure("metric", { value: 13, low: 12, high: 14, unit: "C", basis: "planned", saysBasis: true });
    expect(words(html)).toBe("planned 12.0 to 14.0 °C (54 to 57 °F)");
    expect(html).toMatch(/^<i class="planned">/u);
  });

  it("in hours is also told in days once nobody would count the hours", () => {
    expect(words(figure("metric", { value: 98, unit: "h" }))).toBe("98 h (4.1 d)");
    expect(words(figure("metric", { value: 42, unit: "h" }))).toBe("42 h");
  });

  it("links to its working from wherever it stands", () => {
    expect(figure("metric", { value: 5, unit: "%", working: "batches/tp-03.html#working-abv" })).toContain('href="#working-abv"');
    expect(figure("metric", { value: 5, unit: "%", working: "methods/abv.html" })).toContain('href="../methods/abv.html"');
  });
});

describe("figures on a batch page", () => {
  const files = sampleSite();

  it("stand beside the planned ones, each saying whether it was measured or computed, and a missing one names its reading", () => {
    const html = rendered(files, "batches/tp-03.html");
    expect(html).toMatch(/<th scope="row">Alcohol by volume<\/th><td data-head="From readings"><a class="figure" href="#working-abv"><span class="number">5\.11.±.0\.22.%<\/span><\/a><span class="basis"> computed<\/span><\/td><td data-head="Planned"><i class="planned">/u);
    expect(words(html)).toContain("Oxygen from the package: not measured: package.purge isn’t recorded");
  });

  it("of a planned batch are all marked as planned", () => {
    const html = rendered(files, "batches/tp-04.html");
    expect(words(html)).toContain("planned 1.050");
    expect(html).not.toContain("From readings");
    expect(html).not.toContain('class="basis"');
  });

  it("of a record with nothing in it are absent, and each part says which field would bring them", () => {
    const text = words(rendered(files, "batches/tp-02.html"));
    for (const field of ["aim", "fermentation.log", "dry_hops", "fermenter.volume", "tastings", "repeats", "package", "grist"]) expect(text).toContain(field);
  });

  // Every decimal number in running text or a cell has a unit, a count or a label that is one by trade (gravity, p, scores).
  it("carry their unit in tables of figures", () => {
    const cells = [...rendered(files, "batches/tp-03.html").matchAll(/<th scope="row">([^<]*)[^]*?<td data-head="From readings">([^]*?)<\/td>/gu)];
    expect(cells.length).toBeGreaterThan(10);
    for (const [, title = "", cell = ""] of cells) {
      if (!/gravity/iu.test(title)) expect(words(cell), title).toMatch(/[\d] ?(?:%|°C|g\/L|g|h|d|L|IBU|EBC|kPa|vol|mg\/L|not yet)|not yet/u);
    }
  });

  it("follow the club's unit system", () => {
    const log = sampleLog();
    const text = words(rendered(sampleSite({ ...log, club: { ...log.club, units: "us" } }), "batches/tp-03.html"));
    expect(text).toContain("66.9 ± 0.6 °F (19.4 ± 0.3 °C)");
  });

  it("are told apart as measured, computed and planned in the data", () => {
    const rows = rendered(files, "data/figures.csv").split("\n");
    expect(rows[0]).toBe("batch,figure,basis,value,unit,plus_minus,model,low,high,method");
    expect(rows).toContain("TP-03,abv,computed,5.11,%,0.22,0.1,,,alcohol-by-volume");
    expect(rows.some((row) => row.startsWith("TP-03,original-gravity,measured,"))).toBe(true);
    expect(rows).toContain("TP-03,dry-hop-temperature,planned,13,C,,,12,14,plan");
  });
});
