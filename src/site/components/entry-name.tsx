import type { CompetitionEntry } from "../../report/index.js";
import { useLink } from "../page/page-context.js";
import { batchPage, feedbackPath } from "../page-paths.js";

export interface EntryNameProps {
  readonly entry: CompetitionEntry;
  readonly competition: string;
}

/** An entry as results name it: its title with a link to what the judges wrote, who brewed it, its batch. */
export function EntryName({ entry, competition }: EntryNameProps) {
  const link = useLink();
  const feedback = feedbackPath(competition, entry);
  const name = <bdi>{entryTitle(entry)}</bdi>;
  return (
    <>
      {feedback === undefined ? name : <a href={link(feedback)}>{name}</a>}
      <span class="row-note"><EntryFacts entry={entry} /></span>
    </>
  );
}

export function entryTitle({ title, entry }: CompetitionEntry): string {
  return title ?? `Entry ${entry}`;
}

/** Brewer, style, registration id and batch, as far as they are shown. */
export function EntryFacts({ entry: { entry, brewer, style, batch, title } }: { readonly entry: CompetitionEntry }) {
  const link = useLink();
  return (
    <>
      {brewer === undefined ? null : <><bdi>{brewer}</bdi>. </>}
      {style === undefined ? null : <><bdi>{style}</bdi>. </>}
      {title === undefined ? null : <>Entry <bdi>{entry}</bdi>. </>}
      {batch === undefined ? null : <>Batch <a href={link(`${batchPage(batch.slug)}.html`)}><bdi>{batch.batch}</bdi></a>.</>}
    </>
  );
}
