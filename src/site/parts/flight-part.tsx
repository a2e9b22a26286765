import type { CompetitionEntry, CompetitionReport, FlightReport } from "../../report/index.js";
import { EntryName } from "../components/entry-name.js";
import { ScoreStrip, stripEnds } from "../components/score-strip.js";
import { printedPlace, printedPoints } from "../text/printed-points.js";
import { AgreementPart } from "./agreement-part.js";
import { StabilityPart } from "./stability-part.js";

export interface FlightProps {
  readonly competition: CompetitionReport;
  readonly flight: FlightReport;
}

/** One flight: places, how far its judges agreed, how firmly the order stands. */
export function FlightPart({ competition, flight }: FlightProps) {
  const entries = entriesOf(competition, flight.entries);
  return (
    <section id={flightId(flight.flight)}>
      <h2>Flight <bdi>{flight.flight}</bdi></h2>
      <Places competition={competition} flight={flight} entries={entries} />
      {flight.notes.map((note) => <p key={note} class="log-note">{note}</p>)}
      {flight.stability === undefined ? null : <StabilityPart stability={flight.stability} entries={entries} />}
      {flight.agreement === undefined ? null : <AgreementPart agreement={flight.agreement} competition={competition} />}
    </section>
  );
}

/** Where a flight stands on its competition's page; whatever it is called, without a space. */
export function flightId(flight: string): string {
  return `flight-${flight.replaceAll(/\s+/gu, "-")}`;
}

/** Entries in the order of a list of registration ids. */
export function entriesOf({ entries }: CompetitionReport, ids: readonly string[]): CompetitionEntry[] {
  const byId = new Map(entries.map((entry) => [entry.entry, entry]));
  return ids.flatMap((id) => byId.get(id) ?? []);
}

interface PlacesProps extends FlightProps {
  readonly entries: readonly CompetitionEntry[];
}

function Places({ competition, flight, entries }: PlacesProps) {
  const showsScores = entries.some(({ score, sheets }) => score !== undefined || sheets !== undefined);
  const ends = stripEnds(entries.flatMap(({ score, sheets = [] }) => [...(score === undefined ? [] : [score]), ...sheets.map(({ total }) => total)]));
  return (
    <table class="places stack">
      <caption>Places in flight {flight.flight}{showsScores ? `; scores of ${printedPoints(competition.maximum)}` : ""}</caption>
      <thead>
        <tr>
          <th scope="col">Place</th><th scope="col">Entry</th>
          {showsScores ? <><th scope="col" class="quantity">Agreed</th><th scope="col">As first written down</th></> : null}
        </tr>
      </thead>
      <tbody>
        {entries.map((entry) => (
          <tr key={entry.entry}>
            <td data-head="Place">{entry.place === undefined ? "–" : printedPlace(entry.place)}</td>
            <th scope="row"><EntryName entry={entry} competition={competition.slug} /><Decision entry={entry} /></th>
            {showsScores ? <Scores entry={entry} {...ends} /> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Scores({ entry: { score, sheets }, from, to }: { readonly entry: CompetitionEntry; readonly from: number; readonly to: number }) {
  return (
    <>
      <td class="quantity" data-head="Agreed">{score === undefined ? "–" : <span class="number">{printedPoints(score)}</span>}</td>
      <td data-head="As first written down">
        {sheets === undefined ? "–" : <><span class="number">{sheets.map(({ total }) => printedPoints(total)).join(", ")}</span><ScoreStrip sheets={sheets} agreed={score} from={from} to={to} /></>}
      </td>
    </>
  );
}

function Decision({ entry: { decision, place } }: { readonly entry: CompetitionEntry }) {
  if (decision !== undefined) return <span class="row-note decision"><bdi>{decision}</bdi></span>;
  if (place?.settled === true) return <span class="row-note decision">A tie, settled by a recorded decision.</span>;
  return (place?.shared ?? 1) > 1 ? <span class="row-note decision">Shared: no decision between equal scores is recorded.</span> : null;
}
