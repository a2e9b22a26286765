import type { CompetitionEntry, CompetitionReport } from "../../report/index.js";
import { EntryFacts, entryTitle } from "../components/entry-name.js";
import { FeedbackBody, resultWords } from "../pages/feedback-page.js";
import { printedDate } from "../text/printed-date.js";
import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** What the judges wrote, where it doesn't go on the site: one file an entry, for its brewer; one with all, where every entrant may read it. */
export function feedbackSheets({ report: { feedback } }: PrivateInputs): PrivateSheet[] {
  if (feedback === undefined) return [];
  const told = feedback.entries.filter(({ sheets }) => sheets !== undefined);
  const each = told.map((entry): PrivateSheet => ({
    path: `feedback-${entry.slug}.html`, title: `Feedback, entry ${entry.entry}`, says: "Scores and comments, for its brewer.",
    eyes: `for ${entry.brewer ?? "its brewer"} only`, content: () => <Feedback competition={feedback} entry={entry} />,
  }));
  if (feedback.feedback !== "entrants") return each;
  return [...each, {
    path: "feedback-all.html", title: "Feedback, all entries", says: "Scores and comments of every entry.", eyes: "for those who entered",
    content: () => told.map((entry) => <Feedback key={entry.entry} competition={feedback} entry={entry} />),
  }];
}

function Feedback({ competition, entry }: { readonly competition: CompetitionReport; readonly entry: CompetitionEntry }) {
  return (
    <PaperPage head={`${competition.name}, ${printedDate(competition.date)}: not for publication`} title={entryTitle(entry)}>
      <p><b>{resultWords(competition, entry)}</b> <EntryFacts entry={entry} /></p>
      <FeedbackBody competition={competition} entry={entry} />
    </PaperPage>
  );
}
