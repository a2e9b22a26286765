import type { CompetitionDay, DayEntry, DayFlight } from "../../report/index.js";
import { printedDate } from "../text/printed-date.js";
import { printedPoints } from "../text/printed-points.js";
import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** One score sheet a judge and entry, by flight, with the competition's own sections. */
export function scoreSheets({ report: { day } }: PrivateInputs): PrivateSheet[] {
  if (day === undefined) return [];
  return day.flights.map((flight) => ({
    path: `score-sheets-${flight.slug}.html`, title: `Score sheets, flight ${flight.flight}`,
    says: `${flight.judges.length === 0 ? "One set to copy" : `For ${flight.judges.join(", ")}`}, ${flight.entries.length} each, in the order of pouring.`,
    eyes: "for the judges of the flight",
    content: () => (flight.judges.length === 0 ? [undefined] : flight.judges).flatMap((judge) => flight.entries.map((entry) => <ScoreSheet key={`${judge ?? ""} ${entry.code}`} day={day} flight={flight} judge={judge} entry={entry} />)),
  }));
}

interface ScoreSheetProps {
  readonly day: CompetitionDay;
  readonly flight: DayFlight;
  readonly judge: string | undefined;
  readonly entry: DayEntry;
}

/** Room to write, in lines, by a section's share of the points. */
const LINES = 14;

function ScoreSheet({ day, flight: { flight }, judge, entry: { code, style, declared, allergens } }: ScoreSheetProps) {
  return (
    <PaperPage head={`${day.name}, ${printedDate(day.date)}. Flight ${flight}. Score sheet of judge ${judge ?? "………………"}`} title={`Cup ${code}${style === undefined ? "" : `: ${style}`}`}>
      <p>
        {declared.length === 0 ? "Nothing declared." : <>Declared: <bdi>{declared.join(", ")}</bdi>.</>}{" "}
        {allergens.length === 0 ? "No allergen listed: ask the steward if it matters to you." : <>Contains <bdi>{allergens.join(", ")}</bdi>.</>}
      </p>
      <p class="small">Write before you talk: what is there, then how well it suits the style, then points.</p>
      {day.sheet.map(({ section, maximum }) => (
        <section key={section} class="score-section keep">
          <h2><bdi>{section}</bdi><span class="score-box"><span class="line" /> of {printedPoints(maximum)}</span></h2>
          {Array.from({ length: Math.max(1, Math.round(LINES * maximum / day.maximum)) }, (_, line) => <p key={line} class="rule" />)}
        </section>
      ))}
      <section class="score-section keep">
        <h2>All together<span class="score-box"><span class="line" /> of {printedPoints(day.maximum)}</span></h2>
        <p class="small">One thing the brewer could do:</p>
        {[1, 2].map((line) => <p key={line} class="rule" />)}
      </section>
    </PaperPage>
  );
}
