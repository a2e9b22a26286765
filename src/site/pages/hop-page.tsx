import type { BatchReport, DryHopReport } from "../../report/index.js";
import { Figure } from "../components/figure.js";
import { TastersSaid } from "../components/tasters-said.js";
import { WideTable } from "../components/wide-table.js";
import { useLink } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";
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
      madeFrom: [name, used.map(({ slug: batch, batch: number, title, brewed, dryHops, recipe, aim, tastings }) => ({ batch, number, title, brewed, dryHops, aim, recipe: recipe.kettleHops, tastings: tastings.map(({ attributes, preference, triangle }) => ({ attributes, preference, triangle })) }))],
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
        <table class="hop-batches stack">
          <thead>
            <tr><th scope="col">Batch</th><th scope="col">In the dry hop</th><th scope="col">Dose</th><th scope="col">Beside</th><th scope="col">What tasters said</th></tr>
          </thead>
          <tbody>{batches.map((batch) => <Row key={batch.slug} batch={batch} name={name} slug={slug} />)}</tbody>
        </table>
      </WideTable>
    </>
  );
}

function Row({ batch, name, slug }: { readonly batch: BatchReport; readonly name: string; readonly slug: string }) {
  const link = useLink();
  const own = batch.dryHops.filter((addition) => addition.slug === slug);
  const beside = [...new Set(batch.dryHops.filter((addition) => addition.slug !== slug).map(({ hop }) => hop))];
  return (
    <tr>
      <th scope="row"><a href={link(`batches/${batch.slug}.html`)}><bdi>{batch.batch}</bdi> <bdi>{batch.title}</bdi></a><span class="row-note">{shortDate(batch.brewed.slice(0, 10))}</span></th>
      <td data-head="In the dry hop">{own.length === 0 ? <Kettle batch={batch} name={name} /> : own.map((addition, index) => <Amount key={index} addition={addition} />)}</td>
      <td data-head="Dose" class={own.length === 0 ? "none" : undefined}>{own.map((addition, index) => <span key={index} class="row-line">{addition.dose === undefined ? "–" : <Figure value={addition.dose} unit="g/L" />}</span>)}</td>
      <td data-head="Beside"><bdi>{beside.length === 0 ? "–" : beside.join(", ")}</bdi></td>
      <td data-head="What tasters said"><TastersSaid batch={batch} /></td>
    </tr>
  );
}

/** What it had in the kettle, where the beer had none of it after. */
function Kettle({ batch, name }: { readonly batch: BatchReport; readonly name: string }) {
  const words = useWords();
  const lines = batch.recipe.kettleHops.filter(({ what }) => what.toLowerCase() === name.toLowerCase());
  return <>in the kettle only{lines.length === 0 ? null : <span class="row-note">{lines.map(({ amount, detail }) => [words(amount), words(detail.split(", ")[0] ?? "")].filter((part) => part !== "").join(", ")).join("; ")}</span>}</>;
}

function Amount({ addition }: { readonly addition: DryHopReport }) {
  return <span class="row-line">{addition.grams === undefined ? "amount not recorded" : <Figure value={addition.grams} unit="g" />}, {addition.form}</span>;
}
