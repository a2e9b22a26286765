import type { BatchReport, DryHopReport } from "../../report/index.js";
import { Figure } from "../components/figure.js";
import { WideTable } from "../components/wide-table.js";
import { useLink } from "../page/page-context.js";
import { pageFile } from "../page/page-file.js";
import type { Site } from "../page/site.js";
import type { SiteFile } from "../site-file.js";
import { shortDate } from "../text/printed-date.js";

/** Every batch with one hop: how much, in what form, beside which others. */
export function hopFiles(site: Site): SiteFile[] {
  return site.inputs.log.hops.map(({ name, slug, batches }) => {
    const used = batches.flatMap((batch) => site.batches.get(batch) ?? []).toSorted((one, other) => other.brewed.localeCompare(one.brewed, "en"));
    return pageFile(site, {
      path: `hops/${slug}.html`,
      title: `Hop ${name}`,
      description: `${name}: every batch with it, its dose and form, and what the tasters found.`,
      madeFrom: [name, used.map(({ slug: batch, batch: number, title, brewed, dryHops, aim, tastings }) => ({ batch, number, title, brewed, dryHops, aim, says: tastings.map(({ says }) => says) }))],
      content: () => <Hop name={name} slug={slug} batches={used} />,
    });
  });
}

interface HopProps {
  readonly name: string;
  readonly slug: string;
  readonly batches: readonly BatchReport[];
}

function Hop({ name, slug, batches }: HopProps) {
  return (
    <>
      <header class="opening">
        <p class="overline">Hop</p>
        <h1><bdi>{name}</bdi></h1>
        <p class="lead">{batches.length === 1 ? "In one batch." : `In ${batches.length} batches, newest first.`}</p>
      </header>
      <WideTable label={`Batches with ${name}`}>
        <table class="hop-batches">
          <thead>
            <tr><th scope="col">Batch</th><th scope="col">In the dry hop</th><th scope="col">Dose</th><th scope="col">Beside</th><th scope="col">Whether the aim was met</th></tr>
          </thead>
          <tbody>{batches.map((batch) => <Row key={batch.slug} batch={batch} slug={slug} />)}</tbody>
        </table>
      </WideTable>
    </>
  );
}

function Row({ batch, slug }: { readonly batch: BatchReport; readonly slug: string }) {
  const link = useLink();
  const own = batch.dryHops.filter((addition) => addition.slug === slug);
  const beside = [...new Set(batch.dryHops.filter((addition) => addition.slug !== slug).map(({ hop }) => hop))];
  return (
    <tr>
      <th scope="row"><a href={link(`batches/${batch.slug}.html`)}><bdi>{batch.batch}</bdi> <bdi>{batch.title}</bdi></a><span class="row-note">{shortDate(batch.brewed.slice(0, 10))}</span></th>
      <td>{own.length === 0 ? "in the kettle only" : own.map((addition, index) => <Amount key={index} addition={addition} />)}</td>
      <td>{own.map((addition, index) => <span key={index} class="row-line">{addition.dose === undefined ? "–" : <Figure value={addition.dose} unit="g/L" />}</span>)}</td>
      <td><bdi>{beside.length === 0 ? "–" : beside.join(", ")}</bdi></td>
      <td>{batch.aim?.verdict ?? "no aim recorded"}</td>
    </tr>
  );
}

function Amount({ addition }: { readonly addition: DryHopReport }) {
  return <span class="row-line">{addition.grams === undefined ? "amount not recorded" : <Figure value={addition.grams} unit="g" />}, {addition.form}</span>;
}
