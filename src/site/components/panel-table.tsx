import type { Estimate, PanelReport } from "../../report/index.js";
import { Figure } from "./figure.js";

/** Each taster's repeats, and how far the panel agrees; by code, as everywhere. */
export function PanelTable({ panel }: { readonly panel: PanelReport | undefined }) {
  if (panel === undefined) return null;
  return (
    <>
      <h4>Do the tasters repeat themselves?</h4>
      <div class="findings">{panel.says.map((sentence) => <p key={sentence}>{sentence}</p>)}</div>
      <table class="counts panel stack">
        <caption>Tasters who were served everything {panel.servings === 2 ? "twice" : `${panel.servings} times`}: {panel.cells} lines scored each time</caption>
        <thead><tr><th scope="col">Taster</th><th scope="col">Own scatter, points</th><th scope="col">Repeats, 95 % interval</th><th scope="col">With the others</th></tr></thead>
        <tbody>
          {panel.tasters.map(({ taster, scatter, repeatability, withOthers }) => (
            <tr key={taster}>
              <th scope="row"><bdi>{taster}</bdi></th>
              <td data-head="Own scatter, points"><Figure value={scatter} unit="count" decimals={1} /></td>
              <td data-head="Repeats">{repeatability === undefined ? "–" : <Correlation of={repeatability} />}</td>
              <td data-head="With the others">{withOthers === undefined ? "–" : <Figure value={withOthers} unit="count" decimals={2} />}</td>
            </tr>
          ))}
          <tr class="note-row">
            <td colSpan={4}>Own scatter: standard deviation of a taster’s scores for one cup. Repeats: ICC(1,1), 1 where every serving scores alike, 0 where they have nothing in common (Shrout and Fleiss 1979). With the others: rank correlation with their mean.</td>
          </tr>
        </tbody>
      </table>
    </>
  );
}

function Correlation({ of: { value, low, high } }: { readonly of: Estimate }) {
  return (
    <>
      <Figure value={value} unit="count" decimals={2} />
      {low === undefined || high === undefined ? null : <> (<Figure value={low} low={low} high={high} unit="count" decimals={2} />)</>}
    </>
  );
}
