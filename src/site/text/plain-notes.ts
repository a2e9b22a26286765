/** Marks of Markdown that carry no word. */
const MARKS = /[*_`~#>|]+|^\s*[-+]\s+/gmu;
/** A picture or a link keeps its words, not its address. */
const LINK = /!?\[([^[\]]{0,2000})\]\([^()\s]{0,2000}\)/gu;

/** The words of a brewer's notes without their Markdown, for searching and quoting. */
export function plainNotes(notes: string): string {
  return notes.replaceAll(LINK, "$1").replaceAll(MARKS, " ").replaceAll(/\s+/gu, " ").trim();
}
