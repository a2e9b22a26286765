/** The Tideline Cup: who entered what, what each beer was truly worth, how strict each judge is, and what the table settled. */

import { SECTIONS, drawCodes, judgeEntries, totalOf } from "./competition-scores.mjs";
import { formatTable } from "./csv-table.mjs";

const FOLDER = "shared/competitions/2026-tideline-cup";
const PALE = "American Pale Ale";

/** @type {import("./competition-scores.mjs").Entry[]} */
const ENTRIES = [
  { entry: "E01", flight: "B", style: PALE, brewer: "quayside", title: "Tideline Pale, fifth go", batch: "TP-05", allergens: "barley;wheat", worth: 36, noses: ["Orange pith, clean", "Orange rind; a little caramel"], notes: ["Toast first and then orange, bitterness just long enough", "Balanced. Finish stops a bit early"] },
  { entry: "E02", flight: "A", style: "British Golden Ale", brewer: "breakwater", title: "Signal Gold", allergens: "barley", worth: 39.5, noses: ["Hay, honey, a hedgerow", "Honeyed, fresh straw"], notes: ["Light, dry, all in one piece", "Delicate, well kept, very drinkable"] },
  { entry: "E03", flight: "C", style: PALE, brewer: "saltmarsh", title: "Wrackline", batch: "SM-03", allergens: "barley;wheat;oats", declared: "orange peel", worth: 35, noses: ["Soft orange, some yeast", "Orange sherbet, bready"], notes: ["Round and full, the finish comes and goes", "Full for its strength; the hops are behind the yeast"] },
  { entry: "E04", flight: "B", style: PALE, brewer: "mudlark", title: "Ebb Pale", batch: "ML-04", allergens: "barley", worth: 30, noses: ["Orange, and butter under it", "Popcorn first, then hops"], notes: ["Diacetyl, low but there; otherwise a decent pale", "Slick on the tongue, hops pleasant after that"] },
  { entry: "E05", flight: "A", style: "Blonde Ale", brewer: "samphire", title: "Lighterman", allergens: "barley", worth: 34, noses: ["Bread dough, apple skin", "Clean grain"], notes: ["Plain and clean, a touch sweet", "Nothing wrong and not a lot to talk about"] },
  { entry: "E06", flight: "C", style: "American IPA", brewer: "eelgrass", title: "Long Reach", allergens: "barley", worth: 32, noses: ["Pine and onion", "Resin, allium, alcohol"], notes: ["Strong, hot in the middle, bitter to the end", "Big, rough, keeps scratching"] },
  { entry: "E07", flight: "B", style: PALE, brewer: "saltmarsh", title: "Glasswort Pale, no. 2", batch: "SM-02", allergens: "barley", worth: 40, noses: ["Lemon, fresh and plain to smell", "Lemon zest"], notes: ["Crisp, dry, hops right through", "Bright and exact. Bitterness well judged"] },
  { entry: "E08", flight: "A", style: "Best Bitter", brewer: "oarlock", title: "Third Watch", allergens: "barley;wheat", worth: 37.5, noses: ["Toffee, earth, marmalade", "Caramel, orange, a bit of cellar"], notes: ["Malt and hop in step; dry end", "Good malt, tidy bitterness"] },
  { entry: "E09", flight: "C", style: PALE, brewer: "quayside", title: "Tideline Pale, sixth go", batch: "TP-06", allergens: "barley;oats", worth: 41, noses: ["Orange peel and lemon, full and clean", "Full citrus, no grass"], notes: ["Soft middle, long hop finish without scratching", "Plump and then dry; the best balance of the table"] },
  { entry: "E10", flight: "B", style: PALE, brewer: "driftline", title: "Ferry Pale", allergens: "barley", worth: 33.5, noses: ["Grapefruit, fading", "Citrus, muted; slight cardboard"], notes: ["Wants fresher hops or an earlier date", "Tired"] },
  { entry: "E11", flight: "A", style: "Best Bitter", brewer: "eelgrass", title: "Muster Station", allergens: "barley", worth: 37.5, noses: ["Biscuit and leaf", "Nutty, leafy"], notes: ["Firm, a shade astringent", "Well built, tannin at the end"] },
  { entry: "E12", flight: "C", style: PALE, brewer: "saltmarsh", title: "Glasswort Pale, no. 3", batch: "SM-04", allergens: "barley", worth: 37, noses: ["Lemon, a lot of it", "Lemon oil"], notes: ["Very dry, warm for the style", "Drier and stronger than I look for here, but good"] },
  { entry: "E13", flight: "B", style: PALE, brewer: "oarlock", title: "Bosun", allergens: "barley;rye", worth: 35, noses: ["Pepper, lemon", "Pepper, citrus"], notes: ["\"Rye\", says the glass; dry and spicy", "Rye comes through, nicely crisp"] },
  { entry: "E14", flight: "A", style: "Blonde Ale", brewer: "lanternfish", title: "Shoal", allergens: "barley;wheat", worth: 29, noses: ["Cooked corn", "Sweetcorn, struck match"], notes: ["Sulphur, then cereal", "Under the corn a decent beer is hiding"] },
  { entry: "E15", flight: "C", style: "American IPA", brewer: "breakwater", title: "Groyne", allergens: "barley", worth: 34.5, noses: ["Resin, pine", "Pine sap"], notes: ["Bitter, clean, well made", "Firm, clear, a bit one-sided"] },
  { entry: "E16", flight: "B", style: PALE, brewer: "breakwater", title: "Marker Seven", allergens: "barley;oats", worth: 37, noses: ["Stone fruit, thick haze", "Peach, something green"], notes: ["Soft to the point of sleepy", "Velvety at first, powdery after"] },
  { entry: "E17", flight: "A", style: "British Golden Ale", brewer: "driftline", title: "Slip", allergens: "barley", worth: 33, noses: ["Faint lemon", "Hardly there; lemon if I look for it"], notes: ["Thin, pleasant, gone", "Watery middle"] },
  { entry: "E18", flight: "C", style: PALE, brewer: "quayside", title: "Tideline Pale, fourth go", batch: "TP-04", allergens: "barley;wheat", worth: 35.4, noses: ["Orange and a little paper", "Orange, turning"], notes: ["Dry, firm, past its best by a month", "Clean and dry, hops on the way out"] },
];

/** Nobody sits at a table with an own beer on it. @type {import("./competition-scores.mjs").Judge[]} */
const JUDGES = [
  { judge: "J1", brewer: "mudlark", flights: ["A", "C"], strictness: -1.5 },
  { judge: "J2", brewer: "quayside", flights: ["A"], strictness: 2 },
  { judge: "J3", flights: ["B", "C"], strictness: 0.5 },
  { judge: "J4", brewer: "saltmarsh", flights: ["A"], strictness: -0.5 },
  { judge: "J5", brewer: "samphire", flights: ["B", "C"], strictness: 1 },
  { judge: "J6", flights: ["B"], strictness: -1 },
];

/** One judge of flight B couldn't get past the haze. */
const DISSENTS = [
  { entry: "E16", judge: "J5", points: -10, comment: "Murky, chalky, hop burn at the back; I can't call this a pale ale, whatever the others say." },
];

const CODES = Object.fromEntries(drawCodes("2026-tideline-cup", ENTRIES.length).map((code, index) => [ENTRIES[index].entry, code]));

/** The agreed score where it isn't the mean of the sheets, and how each such case was settled. @type {Record<string, {score?: number, place?: number, decision: string}>} */
const SETTLED = {
  E16: { decision: "Sheets up to 21 points apart; poured again and talked over. Haze allowed, harshness not: agreed below the two higher sheets." },
  E08: { score: 37, place: 2, decision: "Tied with the other bitter at 37; both poured again, side by side. Drier end, second place by two votes to one." },
  E11: { score: 37, place: 3, decision: "Tied at 37; third after the second pour." },
};

/** Agreed scores: near the mean of a table's sheets, in whole points. @param {import("./competition-scores.mjs").Sheet[]} sheets */
function agreeScores(sheets) {
  const finals = ENTRIES.map((entry) => {
    const totals = sheets.filter(({ code }) => code === CODES[entry.entry]).map(totalOf);
    const mean = totals.reduce((sum, total) => sum + total, 0) / totals.length;
    const settled = SETTLED[entry.entry];
    return { entry, score: settled?.score ?? Math.round(mean), place: settled?.place, decision: settled?.decision ?? "" };
  });
  return finals.sort((one, other) => one.entry.flight.localeCompare(other.entry.flight) || other.score - one.score || (one.place ?? 9) - (other.place ?? 9));
}

/** First to third of each flight, in the order of the agreed scores. */
function formatFinals(finals) {
  const placed = new Map();
  const rows = finals.map(({ entry, score, decision }) => {
    const place = (placed.get(entry.flight) ?? 0) + 1;
    placed.set(entry.flight, place);
    return [entry.flight, CODES[entry.entry], score, place <= 3 ? place : "", decision];
  });
  return formatTable(["flight", "code", "score", "place", "decision"], rows);
}

/** Three judges without a beer in the round put the three winners in order. */
function formatBestOfShow() {
  const ranks = { J1: ["E09", "E07", "E02"], J3: ["E09", "E02", "E07"], J6: ["E07", "E09", "E02"] };
  const rows = Object.entries(ranks).flatMap(([judge, order]) => order.map((entry, index) => [judge, CODES[entry], index + 1]));
  return formatTable(["judge", "code", "rank"], rows);
}

/** @returns {Record<string, string>} text of each table, by path from the log's root */
export function buildCompetition() {
  const sheets = judgeEntries("2026-tideline-cup", ENTRIES, JUDGES, CODES, DISSENTS);
  const entryRows = ENTRIES.map((one) => [
    one.entry, CODES[one.entry], one.flight, one.style, one.brewer, one.title, one.batch ?? "", one.allergens, one.declared ?? "",
  ]);
  const judgeRows = JUDGES.map(({ judge, brewer, flights }) => [judge, brewer ?? "", flights.join(";")]);
  const sheetRows = sheets.map(({ flight, judge, code, points, comments }) => [flight, judge, code, ...points, ...comments]);
  const sections = SECTIONS.map(([name]) => name);
  return {
    [`${FOLDER}/entries.csv`]: formatTable(["entry", "code", "flight", "style", "brewer", "title", "batch", "allergens", "declared"], entryRows),
    [`${FOLDER}/judges.csv`]: formatTable(["judge", "brewer", "flights"], judgeRows),
    [`${FOLDER}/scores.csv`]: formatTable(["flight", "judge", "code", ...sections, "comment", "comment_aroma", "comment_flavor"], sheetRows),
    [`${FOLDER}/finals.csv`]: formatFinals(agreeScores(sheets)),
    [`${FOLDER}/best-of-show.csv`]: formatBestOfShow(),
  };
}
