import type { SwatchReport } from "../../report/index.js";

const SAFE_COLOR = /^#[0-9a-f]{6}$/iu;

/** The beer's computed colour as a printed patch; its words are the colour figure beside it. */
export function Swatch({ swatch }: { readonly swatch: SwatchReport | undefined }) {
  if (swatch === undefined || !SAFE_COLOR.test(swatch.css)) return null;
  return (
    <svg class="swatch" viewBox="0 0 28 12" width="28" height="12" aria-hidden="true" focusable="false">
      <rect x="0.5" y="0.5" width="27" height="11" fill={swatch.css} />
    </svg>
  );
}
