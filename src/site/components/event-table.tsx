import type { EventReport } from "../../report/index.js";
import { shortDate } from "../text/printed-date.js";
import { Figure } from "./figure.js";
import { useWords } from "../page/use-words.js";

/** What was done and when, with the day counted from pitching: set in the margin beside the drawing it belongs to. */
export function EventTable({ events }: { readonly events: readonly EventReport[] }) {
  if (events.length === 0) return null;
  return (
    <div class="margin">
      <table class="events">
        <caption>Days since pitching</caption>
        <thead>
          <tr><th scope="col">Day</th><th scope="col">What</th></tr>
        </thead>
        <tbody>{events.map((event, index) => <Event key={index} event={event} />)}</tbody>
      </table>
    </div>
  );
}

function Event({ event: { at, hour, label, planned, dateOnly } }: { readonly event: EventReport }) {
  const words = useWords();
  return (
    <tr class={planned === true ? "planned" : undefined}>
      <td><Figure value={hour / 24} unit="d" decimals={1} /></td>
      <td>
        <bdi>{words(label)}</bdi>{planned === true ? ", planned" : null}
        {" "}<span class="detail">{shortDate(at)}{dateOnly ? ", taken as noon" : null}</span>
      </td>
    </tr>
  );
}
