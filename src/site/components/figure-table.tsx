import type { PlannedReport } from "../../report/index.js";
import type { FigureRow } from "../views/figure-rows.js";
import { missingByReason } from "../views/figure-rows.js";
import { Figure, NotMeasured } from "./figure.js";
import { useWords } from "../page/use-words.js";

/** Figures of one part of a batch: what was measured, or computed from what was, beside what was planned, then what was not measured and why. */
export function FigureTable({ rows, caption }: { readonly rows: readonly FigureRow[]; readonly caption: string }) {
  const present = rows.filter((row) => row.measured !== undefined || row.planned !== undefined);
  return (
    <>
      {present.length === 0 ? null : <PresentFigures rows={present} caption={caption} />}
      <MissingFigures rows={rows} />
    </>
  );
}

function PresentFigures({ rows, caption }: { readonly rows: readonly FigureRow[]; readonly caption: string }) {
  const anyMeasured = rows.some((row) => row.measured !== undefined);
  const anyPlanned = rows.some((row) => row.planned !== undefined);
  return (
    <table class={anyMeasured && anyPlanned ? "figures stack" : "figures"}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Figure</th>
          {anyMeasured ? <th scope="col">From readings</th> : null}
          {anyPlanned ? <th scope="col"><i>Planned</i></th> : null}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <Row key={row.id} row={row} notes={newNotes(rows, index)} anyMeasured={anyMeasured} anyPlanned={anyPlanned} />
        ))}
      </tbody>
    </table>
  );
}

const notesOf = ({ measured, planned }: FigureRow): readonly string[] => measured?.notes ?? planned?.notes ?? [];

/** The notes of a row that no row above it told already. */
function newNotes(rows: readonly FigureRow[], index: number): string[] {
  const told = new Set(rows.slice(0, index).flatMap(notesOf));
  return [...new Set(rows[index] === undefined ? [] : notesOf(rows[index]))].filter((note) => !told.has(note));
}

interface RowProps {
  readonly row: FigureRow;
  readonly notes: readonly string[];
  readonly anyMeasured: boolean;
  readonly anyPlanned: boolean;
}

function Row({ row, notes, anyMeasured, anyPlanned }: RowProps) {
  const words = useWords();
  const { title, measured, planned, working, plannedWorking, againstPlan } = row;
  return (
    <>
      <tr>
        <th scope="row">{title}</th>
        {anyMeasured ? <td data-head="From readings">{measured === undefined ? <i>{row.isOpen ? "not yet" : "not measured"}</i> : <Figure {...measured} saysBasis working={working} />}</td> : null}
        {anyPlanned ? <td data-head="Planned" class={planned === undefined ? "none" : undefined}>{planned === undefined ? "–" : <Planned planned={planned} working={plannedWorking} against={againstPlan} />}</td> : null}
      </tr>
      {notes.length === 0 ? null : <tr class="note-row"><td colspan={anyMeasured && anyPlanned ? 3 : 2}>{words(notes.join(" "))}</td></tr>}
    </>
  );
}

interface PlannedProps {
  readonly planned: PlannedReport;
  readonly working: string | undefined;
  readonly against: string | undefined;
}

/** A planned value, and whether what was measured differs from it by more than the readings can be off by. */
function Planned({ planned, working, against }: PlannedProps) {
  const words = useWords();
  return (
    <>
      <Figure {...planned} basis="planned" working={working} />
      {against === undefined ? null : <span class="detail">, {words(against)}</span>}
    </>
  );
}

/** A few gaps are told where they are; many, as in a batch that has hardly begun, are folded. */
const TOLD_PLAINLY = 3;

function MissingFigures({ rows }: { readonly rows: readonly FigureRow[] }) {
  const groups = missingByReason(rows.filter(({ planned, isOpen }) => planned === undefined || !isOpen));
  if (groups.length === 0) return null;
  const list = (
    <ul class="missing-list">
      {groups.map(({ why, titles }) => (
        <li key={why}>{titles.join(", ")}: <NotMeasured why={why} /></li>
      ))}
    </ul>
  );
  if (groups.length <= TOLD_PLAINLY) return list;
  return <details><summary>Not recorded, and which reading would give it</summary>{list}</details>;
}
