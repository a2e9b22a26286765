import type { BatchReport, BatchSummary } from "../../report/index.js";
import { BatchTable } from "../components/batch-table.js";
import { useLink } from "../page/page-context.js";
import { pageFile, textFile } from "../page/page-file.js";
import { type Site, workingIn, workingsKnown } from "../page/site.js";
import type { SiteFile } from "../site-file.js";

/** Every published batch in one table. */
export function batchListFiles(site: Site): SiteFile[] {
  const rows = site.inputs.log.batches.map(summaryOf);
  return [textFile(site, "batches/index.json", [rows], () => `${JSON.stringify(rows, null, 1)}\n`), pageFile(site, {
    path: "batches/index.html",
    title: "All batches",
    description: `Every batch in the gyle book of ${site.inputs.log.club.name}: ${rows.length} in all, newest first.`,
    madeFrom: [rows, workingsKnown(site)],
    content: () => <BatchList rows={rows} site={site} />,
  })];
}

function BatchList({ rows, site }: { readonly rows: readonly BatchSummary[]; readonly site: Site }) {
  const link = useLink();
  return (
    <>
      <h1>All batches</h1>
      {rows.length === 0 ? <p>No batch is written down yet. <a href={link("help/record.html")}>How to write a record</a>.</p> : (
        <div class="batch-list">
          <p>{rows.length === 1 ? "One batch" : `${rows.length} batches`}, newest first. Each figure is rounded to what its readings support and leads to its working; gravity is measured, the others are computed from readings. Two to four of them can be set <a href={link("compare.html")}>side by side</a>; <a href={link("search.html")}>search</a> goes through the notes too. The table as <a href={link("data/batches.csv")}>CSV</a> and <a href={link("batches/index.json")}>JSON</a>.</p>
          {/* Runs before the table below it is read, so that its controls are there from the first paint. */}
          <script src={link("assets/batch-list.js")} />
          <BatchTable rows={rows} label="All batches" working={workingIn(site)} picks />
        </div>
      )}
    </>
  );
}

/** What a list tells of a batch. */
export function summaryOf(report: BatchReport): BatchSummary {
  const { batch, slug, title, status, brewed, brewer, season, series, style, summary, figures, swatch, dryHops } = report;
  const known = { brewer, season, series, style, swatch };
  return {
    batch, slug, title, status, brewed, summary, figures,
    hops: [...new Set(dryHops.map(({ hop }) => hop))],
    ...(Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined)) as Partial<BatchSummary>),
  };
}
