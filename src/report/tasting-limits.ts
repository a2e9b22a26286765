/** At so few tasters a tasting is described and nothing is concluded (sensory practice for small panels; a recommendation). */
export const DESCRIBED_ONLY = 5;

/** A p at or below this is called shown. */
export const SHOWN_AT = 0.05;

/** Chance of finding a difference: what a panel can be relied on to see, and where missing becomes likelier than finding. */
export const POWERS = { detectable: 0.8, missed: 0.5 } as const;
