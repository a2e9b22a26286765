import type { CompetitionDay, DayFlight } from "../../report/index.js";
import { printedPoints } from "../text/printed-points.js";
import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** For each flight what to pull and pour, and a summary for its head judge. */
export function flightSheets({ report: { day } }: PrivateInputs): PrivateSheet[] {
  if (day === undefined) return [];
  return [
    { path: "pull-sheets.html", title: "Pull sheets", says: "One a flight: which bottle to fetch, under which code to pour it, in which order.", eyes: "for the steward only", content: () => day.flights.map((flight) => <PullSheet key={flight.flight} day={day} flight={flight} />) },
    { path: "flight-summaries.html", title: "Flight summaries", says: "One a flight: each judge’s total, the agreed score, places.", eyes: "for the head judge of the flight", content: () => day.flights.map((flight) => <Summary key={flight.flight} day={day} flight={flight} />) },
  ];
}

interface FlightProps {
  readonly day: CompetitionDay;
  readonly flight: DayFlight;
}

function PullSheet({ day, flight: { flight, entries, judges } }: FlightProps) {
  return (
    <PaperPage head={`${day.name}: for the steward only, it ties bottles to codes`} title={`Pull sheet, flight ${flight}`}>
      <p>Judges: {judges.length === 0 ? "not seated yet" : judges.join(", ")}. Open in this order, out of their sight, weak before strong and mild before bitter (common practice): pour each for all, the same amount, and take only the cups to the table.</p>
      <table>
        <thead><tr><th scope="col"></th><th scope="col">Bottle</th><th scope="col">Cup</th><th scope="col">Style</th><th scope="col">Declared</th><th scope="col">Allergens</th><th scope="col">Opened, fill, remarks</th></tr></thead>
        <tbody>
          {entries.map(({ entry, code, style, declared, allergens }, index) => (
            <tr key={entry}><td>{index + 1}</td><th scope="row"><bdi>{entry}</bdi></th><td class="code">{code}</td><td><bdi>{style ?? ""}</bdi></td><td><bdi>{declared.join(", ")}</bdi></td><td><bdi>{allergens.join(", ")}</bdi></td><td><span class="line" /></td></tr>
          ))}
        </tbody>
      </table>
      <p class="caution"><b>Caution.</b> Bottles may be over-carbonated: keep them cold, open them pointing away from faces, over a tray, and put any that gushes hard or feels wrong aside unopened. What a bottle’s fill or label looks like is noted and changes no score.</p>
    </PaperPage>
  );
}

function Summary({ day, flight: { flight, entries, judges } }: FlightProps) {
  const columns = judges.length === 0 ? ["", "", ""] : judges;
  return (
    <PaperPage head={`${day.name}: for the head judge of flight ${flight}`} title={`Flight summary, ${flight}`}>
      <p>Totals as first written down, before anyone talked; then, where they are more than {printedPoints(day.agreeWithin)} points apart, taste again and agree. The agreed score needn’t be the mean, and nobody has to yield. {day.places === 1 ? "One place is" : `${day.places} places are`} given; one may be withheld. Equal scores are tasted again side by side: write down how it was decided.</p>
      <table class="to-fill">
        <thead><tr><th scope="col">Cup</th><th scope="col">Style</th>{columns.map((judge, index) => <th key={index} scope="col"><bdi>{judge === "" ? "Judge" : judge}</bdi></th>)}<th scope="col">Apart</th><th scope="col">Agreed</th><th scope="col">Place</th></tr></thead>
        <tbody>
          {entries.map(({ code, style }) => (
            <tr key={code}><th scope="row" class="code">{code}</th><td><bdi>{style ?? ""}</bdi></td>{columns.map((_, index) => <td key={index} />)}<td /><td /><td /></tr>
          ))}
        </tbody>
      </table>
      <h2>How ties and changes were decided</h2>
      {[1, 2, 3, 4].map((line) => <p key={line} class="rule" />)}
      <p class="small">Goes into finals.csv as flight, code, score, place, decision. Signed by the judges: <span class="line" /> <span class="line" /> <span class="line" /></p>
    </PaperPage>
  );
}
