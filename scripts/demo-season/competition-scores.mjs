/**
 * Invented judges. A sheet's total is what the beer is worth, plus how strict the judge is, plus what that
 * judge made of that beer; it is then spread over the sections, each rounded and kept within its maximum.
 */

import { createRandom } from "./random.mjs";

/** @typedef {{entry: string, flight: string, style: string, brewer: string, title: string, batch?: string, allergens: string, declared?: string, worth: number, noses: string[], notes: string[]}} Entry */
/** @typedef {{judge: string, brewer?: string, flights: string[], strictness: number}} Judge */
/** @typedef {{flight: string, judge: string, code: string, points: number[], comments: string[]}} Sheet */

/** The sheet: sections and their maxima. @type {[string, number][]} */
export const SECTIONS = [["aroma", 12], ["appearance", 3], ["flavor", 20], ["mouthfeel", 5], ["overall", 10]];
const OPINION_SD = 1.6;

/** Three digits drawn without replacement, no digit twice, none of 0, 6 and 9 (a slip read upside down). @param {string} name */
export function drawCodes(name, count) {
  const random = createRandom(`codes ${name}`);
  const codes = new Set();
  while (codes.size < count) {
    codes.add(random.shuffle(["1", "2", "3", "4", "5", "7", "8"]).slice(0, 3).join(""));
  }
  return [...codes];
}

/** @param {number} total @param {ReturnType<typeof createRandom>} random @returns {number[]} points a section */
function spreadOverSections(total, random) {
  return SECTIONS.map(([, maximum]) => {
    const share = total / 50 + random.normal(0.035);
    return Math.min(maximum, Math.max(1, Math.round(maximum * share)));
  });
}

const OPENINGS = ["", "Pleasant. ", "Honest beer. ", "Poured well. ", "Drinkable. "];
const CLOSINGS = {
  high: ["I'd finish the glass.", "Hard to fault.", "Would order another.", "A little more carbonation and it is there."],
  middle: ["Nearly there.", "Good, not sharp enough.", "Needs a firmer finish.", "Let it settle another week."],
  low: ["Look at the fermentation temperature.", "Check how it was packaged.", "Fresher hops, less of them.", "Start with the water."],
};

/** The first at the table writes at length, the second differently, the third only a line. @returns {string[]} overall, aroma, flavor */
function writeComments(entry, total, seat, random) {
  const band = total >= 37 ? "high" : total >= 31 ? "middle" : "low";
  const line = `${random.pick(OPENINGS)}${random.pick(CLOSINGS[band])}`;
  return [line, entry.noses[seat] ?? "", entry.notes[seat] ?? ""];
}

/**
 * @param {string} name @param {Entry[]} entries @param {Judge[]} judges @param {Record<string, string>} codes
 * @param {{entry: string, judge: string, points: number, comment: string}[]} dissents where one judge saw another beer
 * @returns {Sheet[]}
 */
export function judgeEntries(name, entries, judges, codes, dissents) {
  const random = createRandom(`sheets ${name}`);
  const sheets = [];
  for (const judge of judges) {
    for (const entry of entries.filter(({ flight }) => judge.flights.includes(flight))) {
      const dissent = dissents.find((one) => one.entry === entry.entry && one.judge === judge.judge);
      const total = entry.worth - judge.strictness + random.normal(OPINION_SD) + (dissent?.points ?? 0);
      const points = spreadOverSections(total, random);
      const seat = judges.filter(({ flights }) => flights.includes(entry.flight)).indexOf(judge);
      const comments = writeComments(entry, total, seat, random);
      if (dissent) comments[0] = dissent.comment;
      sheets.push({ flight: entry.flight, judge: judge.judge, code: codes[entry.entry], points, comments });
    }
  }
  return sheets.sort((one, other) => one.flight.localeCompare(other.flight) || one.judge.localeCompare(other.judge));
}

/** @param {Sheet} sheet */
export const totalOf = (sheet) => sheet.points.reduce((sum, points) => sum + points, 0);
