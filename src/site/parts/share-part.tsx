import { siteAddress } from "../page/site-address.js";
import { batchPage } from "../page-paths.js";
import { shareSummary } from "../views/share-summary.js";
import type { BatchView } from "./batch-view.js";

/** The batch in a few lines to paste elsewhere, as plain text and as Markdown. Told last and without a number: it says nothing new. */
export function SharePart({ view: { report, site } }: { readonly view: BatchView }) {
  const { url, units } = site.inputs.log.club;
  const address = url === undefined ? undefined : siteAddress(url, `${batchPage(report.slug)}.html`);
  const { plain, markdown } = shareSummary(report, units, address);
  return (
    <section class="share screen-only" id="share">
      <h2>To pass on</h2>
      <p>This batch in a few lines, made for pasting into a letter or a forum post.</p>
      <details>
        <summary>As plain text</summary>
        <pre class="pasted" tabindex={0} data-copy="the plain text" dir="auto">{plain}</pre>
      </details>
      <details>
        <summary>As Markdown</summary>
        <pre class="pasted" tabindex={0} data-copy="the Markdown" dir="auto">{markdown}</pre>
      </details>
    </section>
  );
}
