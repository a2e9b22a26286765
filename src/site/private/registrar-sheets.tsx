import type { CompetitionDay, DayJudge } from "../../report/index.js";
import { printedDate } from "../text/printed-date.js";
import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** Who entered what under which code; who judges where; what to copy into the log. */
export function registrarSheets({ report: { day } }: PrivateInputs): PrivateSheet[] {
  if (day === undefined) return [];
  const head = `${day.name}, ${printedDate(day.date)}: for the registrar only`;
  return [
    { path: "registrar.html", title: "Registrar’s list and seating", says: "Registration ids with their blind codes and brewers, who judges which flight, and what to copy into entries.csv and judges.csv.", eyes: "for the registrar only", content: () => <Registrar day={day} head={head} /> },
    { path: "cup-labels.html", title: "Cup labels", says: "Blind codes alone, one a cup.", eyes: "for the steward; no judge sees them before the pour", content: () => <CupLabels day={day} /> },
  ];
}

function Registrar({ day, head }: { readonly day: CompetitionDay; readonly head: string }) {
  return (
    <>
      <PaperPage head={head} title="Entries and their codes">
        {day.notes.map((note) => <p key={note} class="caution">{note}</p>)}
        <table>
          <thead><tr><th scope="col">Entry</th><th scope="col">Code</th><th scope="col">Flight</th><th scope="col">Style</th><th scope="col">Title</th><th scope="col">Brewer</th></tr></thead>
          <tbody>
            {day.entries.map(({ entry, code, flight, style, title, brewer }) => (
              <tr key={entry}><th scope="row"><bdi>{entry}</bdi></th><td class="code">{code}</td><td><bdi>{flight}</bdi></td><td><bdi>{style ?? ""}</bdi></td><td><bdi>{title ?? ""}</bdi></td><td><bdi>{brewer ?? ""}</bdi></td></tr>
            ))}
          </tbody>
        </table>
      </PaperPage>
      <PaperPage head={head} title="Who judges what">
        <Seating judges={day.judges} />
        <p class="caution"><b>Caution.</b> The last two columns are what a judge takes in at 50 mL a beer if all of it is swallowed. Put a spit cup, water and plain food at every table, tell judges beforehand that they may spit, and see that nobody drives home who hasn’t. Judges with an allergy say so to the steward, who has the list.</p>
      </PaperPage>
      <PaperPage head={head} title="To copy into the log">
        <p>Copy these over the files in shared/competitions/{day.slug}/: what is recorded there stays as it is, and late entries then change nothing for the others. Only in a log that nobody else can read before the results are out.</p>
        {day.files.map(({ name, text }) => <div key={name}><h2>{name}</h2><pre>{text}</pre></div>)}
      </PaperPage>
    </>
  );
}

function Seating({ judges }: { readonly judges: readonly DayJudge[] }) {
  return (
    <table>
      <thead><tr><th scope="col">Judge</th><th scope="col">Flights</th><th scope="col">Own entries, never before them</th><th scope="col">Beers</th><th scope="col">Beer</th><th scope="col">Alcohol</th></tr></thead>
      <tbody>
        {judges.map(({ judge, flights, own, entries, millilitres, alcoholG }) => (
          <tr key={judge}><th scope="row"><bdi>{judge}</bdi></th><td><bdi>{flights.length === 0 ? "in reserve" : flights.join(", ")}</bdi></td><td><bdi>{own.length === 0 ? "none" : own.join(", ")}</bdi></td><td>{entries}</td><td>{millilitres} mL</td><td>{alcoholG.toFixed(0)} g</td></tr>
        ))}
      </tbody>
    </table>
  );
}

/** Where nobody is seated yet, labels for the usual three. */
const USUAL_JUDGES = 3;

function CupLabels({ day }: { readonly day: CompetitionDay }) {
  return (
    <>
      {day.flights.map(({ flight, entries, judges }) => (
        <PaperPage key={flight} head={`${day.name}: for the steward`} title={`Cup labels, flight ${flight}`}>
          <div class="cups">
            {entries.flatMap(({ code }) => Array.from({ length: judges.length === 0 ? USUAL_JUDGES : judges.length }, (_, index) => <span key={`${code} ${index}`} class="cup code">{code}</span>))}
          </div>
        </PaperPage>
      ))}
    </>
  );
}
