import type { BatchEntryReport } from "../../report/index.js";
import { competitionPage, entryNotesPath, feedbackPath } from "../page-paths.js";
import { useLink } from "../page/page-context.js";
import { printedPoints } from "../text/printed-points.js";
import type { BatchView } from "./batch-view.js";

/** What came of it at competitions; nothing at all before their results are out. */
export function EntriesPart({ view: { report } }: { readonly view: BatchView }) {
  const link = useLink();
  const notes = entryNotesPath(report);
  if (report.entries === undefined && notes === undefined) return null;
  return (
    <section class="part" id="competitions">
      <h2>At competitions</h2>
      {(report.entries ?? []).map((entry) => <OneEntry key={entry.competitionSlug + entry.entry.entry} entry={entry} />)}
      {notes === undefined ? null : <p><a href={link(notes)}>Entry notes</a>, one printed page.</p>}
    </section>
  );
}

function OneEntry({ entry: { competitionSlug, competition, says, entry } }: { readonly entry: BatchEntryReport }) {
  const link = useLink();
  const feedback = feedbackPath(competitionSlug, entry);
  const sections = entry.sections ?? [];
  const comments = (entry.sheets ?? []).filter(({ comment }) => comment !== undefined);
  return (
    <>
      <p>{says} <a href={link(`${competitionPage(competitionSlug)}.html`)}>Results of the <bdi>{competition}</bdi></a>{feedback === undefined ? null : <>; <a href={link(feedback)}>all the judges wrote</a></>}.</p>
      {sections.length === 0 ? null : <p>Mean of {entry.sheets?.length ?? 0} judges: {sections.map(({ section, mean, maximum }, index) => <span key={section}>{index === 0 ? "" : ", "}<bdi>{section}</bdi> <span class="number">{printedPoints(mean)}</span> of {printedPoints(maximum)}</span>)}.</p>}
      {comments.map(({ judge, comment }) => <blockquote key={judge}><p dir="auto">{comment} <span class="row-note">Judge <bdi>{judge}</bdi></span></p></blockquote>)}
    </>
  );
}
