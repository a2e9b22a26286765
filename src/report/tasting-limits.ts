/** At so few tasters a tasting is described and nothing is concluded (sensory practice for small panels; a recommendation). */
export const DESCRIBED_ONLY = 5;

/** A p at or below this is called shown. */
export const SHOWN_AT = 0.05;

/** Chance of finding a difference: what a panel can be relied on to see, and where missing becomes likelier than finding. */
export const POWERS = { detectable: 0.8, missed: 0.5 } as const;

/** Below this the standards advise against asking whether samples are alike (ISO 5495:2005, note; published). */
export const LEAST_FOR_SIMILARITY = 30;

/** Share of tasters that may still tell samples called alike; 20 to 35 % are usual (common practice). */
export const ALIKE_SHARE = 0.3;
