import { BEST_OF_SHOW, ENTRIES, FINALS, JUDGES, SCORES, type CompetitionTable } from "./csv/competition-tables.js";
import type { Competition } from "./schema/index.js";
import type { RecordField } from "./field-reference.js";

/** What each column of a competition's files holds. */
const MEANINGS: Readonly<Record<string, string>> = {
  entry: "Registration id", code: "Blind code; drawn from the seed where it is left out", flight: "Flight the entry is judged in", style: "Style it is entered as",
  brewer: "Handle of the brewer; of a judge, so that nobody meets an own entry", title: "What the beer is called", batch: "Number of the batch in this log; empty for beers brewed elsewhere",
  allergens: "Allergens, separated by ;", declared: "What is declared to the judges, separated by ;", judge: "Code of the judge", flights: "Flights the judge sits at, separated by ;",
  "<section>": "Points of the section, a column for each section of the sheet", "comment_<section>": "What the judge wrote of the section", comment: "What the judge wrote of the beer",
  total: "The sheet's own sum; held against the sections, and otherwise not used", score: "The score that the judges agreed on", rank: "The judge's own rank, 1 for the best",
  place: "The place that was given, 1 for the first; needed where scores or ranks tie", decision: "How a tie, or a place against the scores, was settled",
};

const SECTION: Competition["sheet"] = [{ section: "<section>", value: 0 }];
const TABLES: readonly Pick<CompetitionTable<unknown>, "file" | "columns">[] = [ENTRIES, JUDGES, SCORES, FINALS, BEST_OF_SHOW];

/** The columns of a competition's files as the record help shows them, in the order of the tables that read them. */
export function competitionColumns(): RecordField[] {
  return TABLES.flatMap(({ file, columns }) => {
    const { required, optional } = columns(SECTION);
    const field = (path: string, isRequired: boolean): RecordField => ({ file: `competitions/…/${file}`, path, meaning: MEANINGS[path] ?? "", required: isRequired });
    return [...required.map((path) => field(path, true)), ...optional.map((path) => field(path, false))];
  });
}
