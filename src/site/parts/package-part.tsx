import type { FigureReport, PackageReport } from "../../report/index.js";
import { Cautions } from "../components/caution.js";
import { CheckList } from "../components/check-list.js";
import { Figure, NotMeasured } from "../components/figure.js";
import { FigureTable } from "../components/figure-table.js";
import { printedDate } from "../text/printed-date.js";
import { checksOf } from "../views/part-checks.js";
import { PART_FIGURES } from "../views/part-figures.js";
import { workingPath } from "../views/working-path.js";
import { rowsOf, type BatchView } from "./batch-view.js";
import { Part } from "./part.js";
import { useWords } from "../page/use-words.js";

/** Pressure or sugar, oxygen, and what to be careful of. */
export function PackagePart({ view }: { readonly view: BatchView }) {
  const { packages } = view.report;
  return (
    <Part id="package">
      {packages.length > 0 ? null : view.report.planned["keg-pressure"] !== undefined ? <p>Nothing is packaged yet. What the plan asks for:</p> : (
        <p>Nothing is packaged yet. <code>package</code> with the volume, the temperature and the carbonation asked for gives the pressure to set or the sugar to add.</p>
      )}
      {packages.map((packed, index) => <Packed key={index} packed={packed} view={view} />)}
      <Cautions of={view.report} part="package" />
      <FigureTable rows={rowsOf(view, PART_FIGURES.package)} caption={packages.length > 1 ? "All packages" : "Carbonation and oxygen"} />
      <CheckList checks={checksOf(view.report, "package")} />
    </Part>
  );
}

function Packed({ packed, view }: { readonly packed: PackageReport; readonly view: BatchView }) {
  const words = useWords();
  return (
    <>
      <p>
        {packed.date === undefined ? "Packaged" : `On ${printedDate(packed.date)}`} into {vessels(packed)}
        {packed.litres === undefined ? ", volume not recorded" : <>, <Figure value={packed.litres} unit="L" /></>}
        {packed.temperatureC === undefined ? null : <> at <Figure value={packed.temperatureC} unit="C" /></>}
        {packed.purge === undefined ? ". How air was kept out isn’t recorded." : `. Air kept out: ${words(packed.purge)}.`}
      </p>
      <p><Carbonation packed={packed} /></p>
      {view.report.packages.length > 1 ? <OwnFigures packed={packed} view={view} /> : null}
      {packed.missing.length === 0 || view.report.packages.length === 1 ? null : (
        <ul class="missing-list">{packed.missing.map((why) => <li key={why}><NotMeasured why={why} /></li>)}</ul>
      )}
    </>
  );
}

function vessels({ into, count }: PackageReport): string {
  if (into === "bottles") return count === 1 ? "bottles" : `${count} bottles`;
  return count === 1 ? `a ${into}` : `${count} ${into}s`;
}

function Carbonation({ packed }: { readonly packed: PackageReport }) {
  const { carbonationAsked: asked, carbonationMeasured: measured, limitKPa, sugar } = packed;
  return (
    <>
      {asked === undefined ? "No carbonation is asked for. " : <>Carbonation asked for: <Figure value={asked} unit="vol" basis="planned" />. </>}
      {measured === undefined ? null : <>Measured later: <Figure value={measured} unit="vol" />. </>}
      {sugar === undefined ? null : `Primed with ${sugar}. `}
      {limitKPa === undefined ? "The vessel’s pressure limit isn’t recorded." : <>The vessel’s own limit is <Figure value={limitKPa} unit="kPa" />.</>}
    </>
  );
}

/** With several packages each has its own pressure or sugar. */
function OwnFigures({ packed, view }: { readonly packed: PackageReport; readonly view: BatchView }) {
  const own: readonly (readonly [string, string, FigureReport | undefined])[] = [
    ["Pressure at equilibrium", "keg-pressure", packed.pressure],
    ["Priming sugar", "priming-sugar", packed.primingSugar],
    ["Oxygen, at most", "package-oxygen", packed.oxygen],
  ];
  const told = own.filter(([, , figure]) => figure !== undefined);
  if (told.length === 0) return null;
  return (
    <ul class="own-figures">
      {told.map(([title, id, figure]) => figure === undefined ? null : (
        <li key={id}>{title}: <Figure {...figure} working={workingPath(view.report, view.methods, id)} /></li>
      ))}
    </ul>
  );
}
