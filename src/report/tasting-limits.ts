/** At so few tasters a tasting is described and nothing is concluded (sensory practice for small panels; a recommendation). */
export const DESCRIBED_ONLY = 5;

/** A p at or below this is called shown. */
export const SHOWN_AT = 0.05;
