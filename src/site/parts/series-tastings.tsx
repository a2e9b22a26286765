import type { SeriesAttribute, SeriesTastings, SeriesVersion } from "../../report/index.js";
import { Figure } from "../components/figure.js";
import { useLink } from "../page/page-context.js";
import { useWords } from "../page/use-words.js";

/** What the tasters found, version after version, with what was changed. */
export function SeriesTastingsPart({ tastings }: { readonly tastings: SeriesTastings | undefined }) {
  if (tastings === undefined) return null;
  const { attributes, against, says } = tastings;
  return (
    <section>
      <h2>What the tasters found, version after version</h2>
      {attributes.length === 0 ? null : says.map((sentence) => <p key={sentence}>{sentence}</p>)}
      {attributes.map((attribute) => <AttributeVersions key={attribute.attribute} attribute={attribute} />)}
      {against.map((tasting) => <Against key={`${tasting.slug} ${tasting.number}`} tasting={tasting} />)}
    </section>
  );
}

function AttributeVersions({ attribute: { attribute, versions } }: { readonly attribute: SeriesAttribute }) {
  return (
    <table class="counts stack">
      <caption><bdi>{attribute}</bdi>: how far it moved, on the scale 0 to 10</caption>
      <thead><tr><th scope="col">Version</th><th scope="col">Dose</th><th scope="col">Moved, 95 % interval</th><th scope="col">Shown</th></tr></thead>
      <tbody>{versions.map((version) => <VersionRow key={version.slug} version={version} />)}</tbody>
    </table>
  );
}

function VersionRow({ version: { batch, slug, tasters, lift, low, high, shown, doseGPerL, changed, reservation } }: { readonly version: SeriesVersion }) {
  const link = useLink();
  const words = useWords();
  const interval = low === undefined || high === undefined ? null : <> (<Figure value={low} low={low} high={high} unit="count" decimals={1} />)</>;
  return (
    <tr>
      <th scope="row">
        <a href={link(`batches/${slug}.html#tasters`)}><bdi>{batch}</bdi></a>
        <span class="row-note">{tasters === 1 ? "1 taster" : `${tasters} tasters`}{changed === undefined ? null : <>. {words(changed)}</>}</span>
      </th>
      <td data-head="Dose">{doseGPerL === undefined ? "–" : <Figure value={doseGPerL} unit="g/L" />}</td>
      <td data-head="Moved"><Figure value={lift} unit="count" decimals={1} />{interval}</td>
      <td data-head="Shown">{shown === undefined ? "not shown" : shown === "up" ? "a rise" : "a fall"}{reservation === undefined ? null : <span class="row-note">but {words(reservation)}</span>}</td>
    </tr>
  );
}

/** Versions poured side by side: the only way to compare two of them with the same tasters. */
function Against({ tasting: { batch, slug, number, name, says } }: { readonly tasting: SeriesTastings["against"][number] }) {
  const link = useLink();
  const words = useWords();
  return (
    <>
      <h3><a href={link(`batches/${slug}.html#tasting-${number}`)}><bdi>{batch}</bdi>, <bdi>{name}</bdi></a></h3>
      <div class="findings">{says.map((sentence) => <p key={sentence}>{words(sentence)}</p>)}</div>
    </>
  );
}
