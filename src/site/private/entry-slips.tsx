import type { SlipReport } from "../../report/index.js";
import { PaperPage } from "./paper-page.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";
import { qrPath } from "./qr-path.js";
import { Ruler } from "./ruler.js";

/** Bottles a competition may ask for; those that are over are thrown away. */
const A_PAGE = 8;

/** Slips for the bottles of a batch's entries, in millimetres. */
export function entrySlips({ report: { slips = [] } }: PrivateInputs): PrivateSheet[] {
  if (slips.length === 0) return [];
  return [{
    path: "bottle-slips.html", title: "Bottle slips", says: `One a bottle, held by a rubber band; registration id and its code, nothing that says whose it is.`,
    eyes: "for the brewer; only the slips leave the house",
    content: () => slips.map((slip) => (
      <PaperPage key={slip.scans} head={slip.competition} title={`Bottle slips, ${slip.entry}`}>
        <Ruler />
        <p class="small">Print, hold a ruler against the line, cut along the edges. One slip a bottle, by a rubber band: no glue, no tape. Bottles plain, caps plain or blacked. Glass under pressure: pack it upright, padded and cool.</p>
        <div class="slips">{Array.from({ length: A_PAGE }, (_, index) => <Slip key={index} slip={slip} />)}</div>
      </PaperPage>
    )),
  }];
}

function Slip({ slip: { entry, competition, style, scans } }: { readonly slip: SlipReport }) {
  const { path, size } = qrPath(scans);
  return (
    <div class="slip keep">
      <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={`QR code: ${scans}`}><path d={path} fill="#000" shape-rendering="crispEdges" /></svg>
      <div><p class="slip-id"><bdi>{entry}</bdi></p><p class="small"><bdi>{competition}</bdi>{style === undefined ? null : <><br /><bdi>{style}</bdi></>}</p></div>
    </div>
  );
}
