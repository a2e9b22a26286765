import type { Batch, CompetitionRecord } from "../../records/index.js";
import { listed } from "../season-words.js";
import { styleRows } from "../style-rows.js";
import type { BatchReport, EntryNote, EntryNotesReport } from "../types.js";
import { allergensOf, names } from "./allergens.js";
import { type Brewed, daysBetween, earlierOf } from "./candidates.js";
import { entryChecklist, entryCautions, servingWords } from "./entry-checklist.js";
import { ingredientWords } from "./ingredient-words.js";

type Enter = NonNullable<Batch["enter"]>[number];

/** The notes for the competitions that a record enters; undefined where it enters none of this log's. */
export function entryNotes({ scene, report }: Brewed, competitions: readonly CompetitionRecord[], all: readonly Brewed[]): EntryNotesReport | undefined {
  const { batch } = scene;
  const notes = (batch.enter ?? []).flatMap((enter) => {
    const competition = competitions.find(({ slug }) => slug === enter.competition);
    return competition === undefined ? [] : [entryNote({ scene, report }, enter, competition)];
  });
  if (notes.length === 0) return undefined;
  const words = brewersWords(batch, report);
  return {
    notes, ingredients: ingredientWords(report), serving: servingWords(report),
    checklist: entryChecklist(report), cautions: entryCautions(report),
    ...(words === undefined ? {} : { words }), earlier: earlierOf(report, all),
  };
}

function entryNote({ scene, report }: Brewed, { style = report.style, declare = [], allergens = [] }: Enter, { data }: CompetitionRecord): EntryNote {
  const found = allergensOf(scene.batch);
  const unlisted = found.filter((allergen) => !names(allergens, allergen));
  const { packaged } = report;
  return {
    competition: data.name, date: data.date.text, ...(style === undefined ? {} : { style }),
    styleRows: styleRows(scene, report.planned, style),
    declare, declaring: declaring(scene.batch, declare), allergens, allergensUnlisted: unlisted,
    allergensSay: allergensSay(allergens, unlisted),
    ...(packaged === undefined || packaged.slice(0, 10) > data.date.date ? {} : { daysOld: daysBetween(packaged, data.date.date) }),
  };
}

function declaring({ additions = [] }: Batch, declare: readonly string[]): string[] {
  const added = [...new Set(additions.flatMap(({ what }) => (what === undefined ? [] : [what])))];
  const inRecord = (word: string): boolean => added.some((what) => what.toLowerCase().includes(word.toLowerCase()));
  const undeclared = added.filter((what) => !declare.some((word) => what.toLowerCase().includes(word.toLowerCase())));
  const unknown = declare.filter((word) => !inRecord(word));
  return [
    declare.length === 0 ? "Nothing special is declared." : `Declare: ${listed(declare)}.`,
    ...(unknown.length === 0 ? [] : [`The record adds no ${listed(unknown)}: a flavour that comes from the hops or the yeast isn't an ingredient, so see whether the style asks for it to be declared.`]),
    ...(undeclared.length === 0 ? [] : [`Added and not declared: ${listed(undeclared)}. Declare what a judge should look for; what only ferments out needs no word unless the rules ask.`]),
    "Don't declare malt, hops, yeast and process that the style takes for granted, nor anything that names you, your place or the club.",
  ];
}

function allergensSay(allergens: readonly string[], unlisted: readonly string[]): string {
  const contains = allergens.length === 0 ? "No allergen is listed in the record." : `Contains ${listed(allergens)}.`;
  return unlisted.length === 0 ? contains : `${contains} The recipe also points to ${listed(unlisted)}: list it, since judges and stewards drink by this line.`;
}

/** What fits a printed page beside everything else. */
const MOST_WORDS = 420;

/** The aim in the brewer's words, else the first paragraph of the notes. */
function brewersWords({ aim }: Batch, { notes }: BatchReport): string | undefined {
  const first = notes.trim().split(/\r?\n\s*\r?\n/u).find((paragraph) => /^[\p{L}"“‘']/u.test(paragraph.trim()));
  const words = [aim?.words, first].filter((each) => each !== undefined).join(" ").replaceAll(/\s+/gu, " ").trim();
  if (words === "") return undefined;
  if (words.length <= MOST_WORDS) return words;
  const cut = words.slice(0, MOST_WORDS);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), 1))}…`;
}
