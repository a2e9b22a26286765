import type { BatchReport } from "../../report/index.js";
import { Figure } from "./figure.js";

const SAFE_COLOR = /^#[0-9a-f]{6}$/iu;
/** More bands than this are too thin to tell apart on a phone. */
const MOST_BANDS = 40;
const [BAND, GAP, HEIGHT] = [28, 2, 80];

/** The frontispiece: the computed colour of each beer, band beside band in brew order, as a plate in a printed book. */
export function Plate({ batches }: { readonly batches: readonly BatchReport[] }) {
  const beers = [...batches].reverse().flatMap(({ batch, swatch }) => (swatch !== undefined && SAFE_COLOR.test(swatch.css) ? [{ batch, swatch }] : [])).slice(-MOST_BANDS);
  const [first, last] = [beers[0], beers.at(-1)];
  if (first === undefined || last === undefined || beers.length < 2) return null;
  const shades = beers.map(({ swatch }) => swatch.ebc);
  const width = beers.length * BAND - GAP;
  return (
    <figure class="plate">
      <svg viewBox={`0 0 ${width} ${HEIGHT}`} preserveAspectRatio="none" aria-hidden="true" focusable="false">
        {beers.map(({ batch, swatch }, index) => <rect key={batch} x={index * BAND} width={BAND - GAP} height={HEIGHT} fill={swatch.css} />)}
      </svg>
      <figcaption>
        The colour of each beer in the order they were brewed, <bdi>{first.batch}</bdi> to <bdi>{last.batch}</bdi>, from <Figure value={Math.min(...shades)} unit="EBC" brief /> to <Figure value={Math.max(...shades)} unit="EBC" brief />: computed for <Figure value={last.swatch.glassCm} unit="cm" brief /> of beer.
      </figcaption>
    </figure>
  );
}
