import type { BatchReport } from "../../report/index.js";
import { ComparisonTable } from "../components/comparison-table.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { useWords } from "../page/use-words.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";

/** One beer, version after version: what was changed, what it did. */
export function seriesFiles(site: Site): SiteFile[] {
  return site.inputs.log.series.map(({ name, slug, batches }) => {
    const versions = batches.flatMap((batch) => site.batches.get(batch) ?? []);
    return pageFile(site, {
      path: `series/${slug}.html`,
      title: `Series ${name}`,
      description: `${name}, version after version: ${versions.length} brewed or planned, what changed each time and what it did.`,
      madeFrom: [name, versions.map(({ slug: version, batch, title, brewed, status, summary, comparison }) => ({ version, batch, title, brewed, status, summary, comparison }))],
      content: () => <Series name={name} versions={versions} />,
    });
  });
}

function Series({ name, versions }: { readonly name: string; readonly versions: readonly BatchReport[] }) {
  return (
    <>
      <header class="opening">
        <p class="overline">Series</p>
        <h1><bdi>{name}</bdi></h1>
        <p class="lead">{versions.length === 1 ? "One version so far." : `${versions.length} versions of one beer, oldest first.`}</p>
      </header>
      {versions.map((version) => <Version key={version.slug} version={version} />)}
    </>
  );
}

function Version({ version }: { readonly version: BatchReport }) {
  const words = useWords();
  const link = useLink();
  const { slug, batch, title, brewed, status, summary, comparison } = version;
  return (
    <section>
      <h2><a href={link(`batches/${slug}.html`)}><bdi>{batch}</bdi> <bdi>{title}</bdi></a></h2>
      <p class="overline">{status === "planned" ? "To be brewed" : "Brewed"} {printedDate(brewed)}, {status}</p>
      {summary === "" ? null : <p>{words(summary)}</p>}
      {comparison === undefined ? null : (
        <>
          <p>{words(comparison.says)}</p>
          <ComparisonTable comparison={comparison} batch={batch} />
        </>
      )}
    </section>
  );
}
