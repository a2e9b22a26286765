import type { BatchReport, PlannedReport, RecipeLine } from "../../report/index.js";
import type { LargePart } from "../content-key.js";
import { Figure } from "../components/figure.js";
import { useLink } from "../page/page-context.js";
import { brewDayPath } from "../page-paths.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import { useWords } from "../page/use-words.js";
import type { SiteFile } from "../site-file.js";
import { printedDate } from "../text/printed-date.js";

/** The brew day on one printed page: what to prepare, the recipe in the order it is used, and room to write the readings. */
export function brewDaySheet(site: Site, report: BatchReport, key: LargePart): SiteFile[] {
  const path = brewDayPath(report);
  if (path === undefined) return [];
  return [pageFile(site, {
    path,
    title: `${report.batch}, brew day`,
    description: `What to prepare, weigh and read on the brew day of ${report.batch}, ${report.title}, on one printed page.`,
    kind: "sheet",
    madeFrom: [key],
    content: () => <Sheet site={site} report={report} />,
  })];
}

function Sheet({ site, report }: { readonly site: Site; readonly report: BatchReport }) {
  const link = useLink();
  const { batch, title, style, brewed, brewer, recipe } = report;
  return (
    <article class="sheet">
      <p class="screen-only"><a href={link(`batches/${report.slug}.html`)}>Back to the batch</a>. This page prints on one sheet.</p>
      <h1>Brew day: <bdi>{batch}</bdi>, <bdi>{title}</bdi></h1>
      <p class="overline">{site.inputs.log.club.name}. {style === undefined ? null : <><bdi>{style}</bdi>. </>}{printedDate(brewed)}{brewer === undefined ? null : <>, <bdi>{brewer}</bdi></>}.</p>
      <p class="sheet-caution">Hot liquor and wort scald: dry gloves, clear floor, lift with help. Cleaners by their maker's label, never mixed. Ferment where air moves: carbon dioxide gathers low.</p>
      <div class="sheet-columns">
        <Prepare report={report} />
        <Lines title="Grist" lines={recipe.grist} />
        <Lines title="Water and mash" lines={[...recipe.water, ...recipe.mash]} />
        <Lines title="Boil and stand" lines={recipe.kettleHops} />
        <Lines title="Yeast" lines={recipe.yeast === undefined ? [] : [recipe.yeast]} />
        <ToRead planned={report.planned} />
      </div>
    </article>
  );
}

function Prepare({ report: { outlook } }: { readonly report: BatchReport }) {
  const words = useWords();
  // Sugar is weighed weeks later, by the batch's page and its caution.
  const lines = outlook.filter(({ id }) => id !== "priming-sugar");
  if (lines.length === 0) return null;
  return (
    <section>
      <h2>To prepare and to expect</h2>
      <table>
        <tbody>
          {lines.map(({ id, what, value, low, high, unit }) => (
            <tr key={id}>
              <th scope="row">{words(what)}</th>
              <td>{value === undefined ? null : <Figure value={value} unit={unit} basis="planned" />}{value === undefined && low !== undefined && high !== undefined ? <Figure value={low} low={low} high={high} unit={unit} basis="planned" /> : null}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly RecipeLine[] }) {
  const words = useWords();
  if (lines.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <table>
        <tbody>
          {lines.map((line, index) => (
            <tr key={index}><td>{words(line.amount)}</td><th scope="row"><bdi>{line.what}</bdi> <span class="row-note"><bdi>{words(line.detail)}</bdi></span></th></tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What the figures will need, with what the plan expects of it where it says. */
const READINGS: readonly (readonly [what: string, planned?: string])[] = [
  ["Strike water, temperature"], ["Mash, temperature"], ["Mash, pH"],
  ["Before the boil: volume and its temperature"], ["Before the boil: gravity"],
  ["After the boil: volume and its temperature"], ["After the boil: gravity"],
  ["In the fermenter: volume"], ["In the fermenter: gravity", "original-gravity"], ["Wort at pitching, temperature"], ["Pitched at, time"],
];

function ToRead({ planned }: { readonly planned: Readonly<Record<string, PlannedReport>> }) {
  return (
    <section>
      <h2>To read and write down</h2>
      <table>
        <thead><tr><th scope="col">Reading</th><th scope="col"><i>Planned</i></th><th scope="col">Read</th></tr></thead>
        <tbody>
          {READINGS.map(([what, id]) => {
            const expected = id === undefined ? undefined : planned[id];
            return <tr key={what}><th scope="row">{what}</th><td>{expected === undefined ? null : <Figure {...expected} basis="planned" />}</td><td class="to-write" /></tr>;
          })}
        </tbody>
      </table>
    </section>
  );
}
