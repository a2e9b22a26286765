/**
 * What a report holds: plain JSON, no functions and no Date objects, so that it
 * can be diffed, tested and exported, and a page only formats it.
 *
 * Times are civil times of the club's zone as text ("2026-03-18 19:00"), beside
 * hours elapsed since pitching (or since the brew date where no pitching time is
 * recorded) for everything that is drawn or subtracted.
 */
export type * from "./types/figure-types.js";
export type * from "./types/cellar-types.js";
export type * from "./types/tasting-types.js";
export type * from "./types/batch-types.js";
export type * from "./types/season-types.js";
export type * from "./types/private-types.js";
export type * from "./types/competition-types.js";
export type * from "./types/entry-types.js";
export type * from "./types/day-types.js";
