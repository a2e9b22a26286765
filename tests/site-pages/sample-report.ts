import type { BatchReport, BatchSummary, LogReport, RecipeReport } from "../../src/report/index.js";
import { fullBatch } from "./sample-full.js";

const noRecipe: RecipeReport = { grist: [], kettleHops: [], dryHops: [], water: [], mash: [], additions: [] };

/** A record with only its required fields. */
export const minimalBatch: BatchReport = {
  batch: "TP-02", slug: "tp-02", title: "Tideline Pale, second go", status: "packaged", brewed: "2025-12-06", file: "batches/tp-02.md",
  summary: "Nothing is measured: the record holds a title, a number and a brew date.",
  figures: {}, missing: { abv: "fermenter.gravity isn’t recorded", "original-gravity": "fermenter.gravity isn’t recorded", "loss-total": "fermenter.volume isn’t recorded" },
  planned: {}, checks: [], tastings: [], ledger: [], dryHops: [], packages: [], styleRows: [], recipe: noRecipe, next: [], planRows: [], outlook: [], working: [], photos: [], notes: "", assumptions: [],
};

/** A batch that is still to be brewed: figures from the plan only. */
export const plannedBatch: BatchReport = {
  ...minimalBatch, batch: "TP-04", slug: "tp-04", title: "Tideline Pale, fourth go", status: "planned", brewed: "2026-11-07", file: "batches/tp-04.md",
  season: "pales-2026", seasonSlug: "pales-2026", series: "tideline", seriesSlug: "tideline", style: "American Pale Ale",
  summary: "To be brewed on 7 November 2026: three times the Cascade, to see where it stops.",
  missing: { abv: "fermenter.gravity isn’t recorded" },
  planned: {
    "original-gravity": { value: 1.05, unit: "SG", method: "plan" }, abv: { value: 5.1, unit: "%", method: "alcohol-by-volume" },
    "dry-hop-dose": { value: 9, unit: "g/L", method: "plan" }, "dry-hop-mass": { value: 194, unit: "g", method: "dry-hop-mass", notes: ["At the planned 21.5 L."] },
  },
  next: [{ id: "brew", step: "Brew", state: "later", when: "2026-11-07", says: "Everything it needs is in the recipe." }, { id: "dry-hop", step: "Dry hop", state: "blocked", when: "2026-11-17 19:00", instant: "2026-11-17T19:00:00.000Z", says: "Gravity must be terminal first." }],
};

/** What a list tells of a sample batch. */
export const summary = ({ batch, slug, title, status, brewed, summary: says, figures, dryHops, brewer, style, swatch }: BatchReport): BatchSummary => ({
  batch, slug, title, status, brewed, summary: says, figures, hops: dryHops.map(({ hop }) => hop),
  ...(brewer === undefined ? {} : { brewer }), ...(style === undefined ? {} : { style }), ...(swatch === undefined ? {} : { swatch }),
});

/** A whole log of three batches: full, planned, minimal. */
export function sampleLog(batches: readonly BatchReport[] = [plannedBatch, fullBatch, minimalBatch]): LogReport {
  const inSeason = batches.filter(({ seasonSlug }) => seasonSlug !== undefined);
  const inSeries = batches.filter(({ seriesSlug }) => seriesSlug !== undefined).map(({ slug }) => slug);
  return {
    club: { name: "Saltings Homebrewers", zone: "Europe/London", units: "metric", asOf: "2026-10-20 12:00", cautions: [] },
    batches,
    seasons: [{
      season: "pales-2026", slug: "pales-2026", batches: inSeason.map(({ batch }) => batch), rows: inSeason.map(summary), pooled: {},
      summary: "One batch brewed and one planned: too few for any trend.",
      series: [{
        figure: "dry-hop-dose", title: "Dry-hop dose", unit: "g/L", points: [{ batch: "TP-03", slug: "tp-03", title: "Tideline Pale, third go", brewed: "2026-01-24", value: 4.52, plusMinus: 0.08 }],
        without: [{ batch: "TP-04", why: "not brewed yet" }], says: "One batch has a dose: 4.5 g/L.",
      }],
      relations: [], groups: [], tested: { count: 0, says: "Nothing could be tested: too few batches have the figures." },
    }],
    series: [{ name: "tideline", slug: "tideline", batches: inSeries.toReversed() }],
    hops: [{ name: "Cascade", slug: "cascade", batches: batches.filter(({ dryHops }) => dryHops.some(({ slug }) => slug === "cascade")).map(({ slug }) => slug) }],
    competitions: [], coming: [], leftOut: [],
  };
}
