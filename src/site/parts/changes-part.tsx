import { ComparisonTable } from "../components/comparison-table.js";
import { useLink } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
import type { BatchView } from "./batch-view.js";
import { Part } from "./part.js";

/** Against the batch it repeats: recipe, process and result, side by side. */
export function ChangesPart({ view: { report } }: { readonly view: BatchView }) {
  const words = useWords();
  const { comparison } = report;
  const link = useLink();
  return (
    <Part id="changes">
      {comparison === undefined ? (
        <p>There is no earlier batch to hold this one against. <code>repeats</code> names one; in a <code>series</code> it is the one before.</p>
      ) : (
        <>
          <p>{words(comparison.says)} The one before: <a href={link(`batches/${comparison.withSlug}.html`)}><bdi>{comparison.with}</bdi>, <bdi>{comparison.withTitle}</bdi></a>.</p>
          <ComparisonTable comparison={comparison} batch={report.batch} />
        </>
      )}
    </Part>
  );
}
