/**
 * What each batch's probe lived through. Times are civil, temperatures Celsius.
 * `gravity` where the batch had a floating probe; `hidden` where the fermentation shows only as warmth.
 */

/** @typedef {import("./fermentation-log.mjs").LogPlan} LogPlan */

/** A floating probe at its best reads to two ten-thousandths once the foam is gone; an old one to seven. */
const STEADY = 0.0002;
const RESTLESS = 0.0007;

/** @type {Record<string, LogPlan>} */
const QUAYSIDE = {
  "batches/2025-11-tideline-1/fermentation.csv": {
    from: "2025-11-08 15:45", to: "2025-11-21 18:45", everyMinutes: 60, pitchedC: 17.8, rippleC: 0.15,
    settings: [["2025-11-08 15:45", 19], ["2025-11-12 08:00", 20], ["2025-11-19 18:00", 1.9, 8]],
    hidden: { original: 1.0505, final: 1.0115, halfHours: 46, widthHours: 13 },
  },
  "batches/2025-12-tideline-2/fermentation.csv": {
    from: "2025-12-06 16:20", to: "2025-12-21 15:20", everyMinutes: 60, pitchedC: 18.5, rippleC: 0.15,
    settings: [["2025-12-06 16:20", 19], ["2025-12-10 08:00", 20], ["2025-12-15 18:00", 14, 6], ["2025-12-19 19:00", 2.1, 8]],
    hidden: { original: 1.0505, final: 1.011, halfHours: 38, widthHours: 11 },
  },
  "batches/2026-01-tideline-3/fermentation.csv": {
    from: "2026-01-24 16:10", to: "2026-02-09 19:10", everyMinutes: 60, pitchedC: 18.2, rippleC: 0.15,
    settings: [["2026-01-24 16:10", 19], ["2026-01-28 08:00", 20], ["2026-02-02 20:00", 13, 6], ["2026-02-07 19:00", 1.9, 8]],
    gravity: { original: 1.0496, final: 1.0104, halfHours: 44, widthHours: 13, noise: STEADY },
  },
  // The power went in a storm: no rows, and the fridge drifted up towards the shed's 16 C.
  "batches/2026-02-tideline-4/fermentation.csv": {
    from: "2026-02-28 15:50", to: "2026-03-16 18:50", everyMinutes: 60, pitchedC: 18.4, rippleC: 0.15,
    settings: [
      ["2026-02-28 15:50", 19], ["2026-03-04 08:00", 20], ["2026-03-09 20:00", 13, 6], ["2026-03-11 23:00", 16.5, 26],
      ["2026-03-13 05:00", 13, 6], ["2026-03-14 19:00", 1.8, 8],
    ],
    gap: ["2026-03-11 22:55", "2026-03-13 05:45"],
    gravity: { original: 1.0503, final: 1.0095, halfHours: 41, widthHours: 12, noise: STEADY },
  },
  "batches/2026-04-tideline-5/fermentation.csv": {
    from: "2026-04-04 15:30", to: "2026-04-18 14:30", everyMinutes: 60, pitchedC: 18.0, rippleC: 0.15,
    settings: [["2026-04-04 15:30", 19], ["2026-04-08 08:00", 20], ["2026-04-13 20:00", 18, 5], ["2026-04-16 19:00", 1.9, 8]],
    hidden: { original: 1.05, final: 1.0105, halfHours: 43, widthHours: 12 },
  },
  "batches/2026-05-tideline-6/fermentation.csv": {
    from: "2026-05-09 16:00", to: "2026-05-25 18:00", everyMinutes: 60, pitchedC: 18.6, rippleC: 0.2,
    settings: [
      ["2026-05-09 16:00", 19], ["2026-05-13 08:00", 20], ["2026-05-17 20:00", 16, 5], ["2026-05-20 07:00", 10, 6],
      ["2026-05-23 19:00", 1.9, 8],
    ],
    gravity: { original: 1.0513, final: 1.011, halfHours: 42, widthHours: 12, noise: STEADY },
  },
  "batches/2026-06-tideline-7/fermentation.csv": {
    from: "2026-06-20 16:15", to: "2026-07-06 19:15", everyMinutes: 60, pitchedC: 19.0, rippleC: 0.25,
    settings: [["2026-06-20 16:15", 19], ["2026-06-24 08:00", 20], ["2026-06-29 18:00", 8, 7], ["2026-07-04 19:00", 2.2, 10]],
    gravity: { original: 1.0504, final: 1.011, halfHours: 40, widthHours: 12, noise: STEADY },
  },
  "batches/2026-08-tideline-8/fermentation.csv": {
    from: "2026-08-29 15:40", to: "2026-09-13 15:40", everyMinutes: 60, pitchedC: 18.8, rippleC: 0.2,
    settings: [["2026-08-29 15:40", 19], ["2026-09-02 08:00", 20], ["2026-09-07 20:00", 12, 6], ["2026-09-11 19:00", 1.9, 9]],
    hidden: { original: 1.0511, final: 1.0105, halfHours: 42, widthHours: 12 },
  },
  // Still falling when the log's "today" cuts it off.
  "batches/2026-10-tideline-9/fermentation.csv": {
    from: "2026-10-15 20:10", to: "2026-10-20 11:10", everyMinutes: 60, pitchedC: 17.6, rippleC: 0.15,
    settings: [["2026-10-15 20:10", 18]],
    gravity: { original: 1.0508, final: 1.0108, halfHours: 84, widthHours: 18, noise: STEADY },
  },
  "batches/2026-04-cordgrass/fermentation.csv": {
    from: "2026-04-25 17:00", to: "2026-05-09 10:00", everyMinutes: 60, pitchedC: 18.5, rippleC: 0.2,
    settings: [["2026-04-25 17:00", 19], ["2026-04-29 08:00", 20], ["2026-05-03 20:00", 14, 6], ["2026-05-07 10:00", 2, 8]],
    hidden: { original: 1.0462, final: 1.01, halfHours: 42, widthHours: 12 },
  },
};

/** A bucket in a cupboard: more swing, more of its own heat. @type {Record<string, LogPlan>} */
const MUDLARK = {
  // Crosses the night the clocks go forward, so its rows step from 00:05 to 02:05 on 29 March.
  "batches/2026-03-slack-water/fermentation.csv": {
    from: "2026-03-15 17:05", to: "2026-04-10 19:05", everyMinutes: 60, pitchedC: 19.5, rippleC: 0.4, heatC: 1.8,
    settings: [["2026-03-15 17:05", 18.5, 7], ["2026-03-25 19:00", 22, 9], ["2026-04-02 18:00", 16, 10], ["2026-04-08 19:00", 4, 14]],
    gravity: {
      original: 1.0512, final: 1.0145, halfHours: 40, widthHours: 13, noise: STEADY, stall: [1.0203, "2026-03-25 19:00", 44],
    },
  },
  "batches/2026-05-ebb-pale/fermentation.csv": {
    from: "2026-05-03 18:20", to: "2026-05-13 19:20", everyMinutes: 60, pitchedC: 20.2, rippleC: 0.4, heatC: 1.8,
    settings: [["2026-05-03 18:20", 19.8, 7], ["2026-05-11 19:00", 4, 14]],
    hidden: { original: 1.0482, final: 1.0105, halfHours: 70, widthHours: 26 },
  },
  "batches/2026-06-flotsam/fermentation.csv": {
    from: "2026-06-07 17:30", to: "2026-06-21 09:30", everyMinutes: 60, pitchedC: 22.5, rippleC: 0.6, heatC: 2.2,
    settings: [["2026-06-07 17:30", 22.5, 8], ["2026-06-13 12:00", 24, 14], ["2026-06-17 12:00", 22.8, 14]],
    gravity: { original: 1.047, final: 1.0098, halfHours: 34, widthHours: 11, noise: RESTLESS, creep: ["2026-06-11 12:00", 0.0062, 110] },
  },
  "batches/2026-08-mudbank-gold-2/fermentation.csv": {
    from: "2026-08-02 17:50", to: "2026-08-23 11:50", everyMinutes: 60, pitchedC: 20.5, rippleC: 0.45, heatC: 1.8,
    settings: [["2026-08-02 17:50", 19, 7], ["2026-08-13 20:00", 15, 10]],
    hidden: { original: 1.041, final: 1.0075, halfHours: 44, widthHours: 14 },
  },
};

/** @type {Record<string, LogPlan>} */
const SALTMARSH = {
  "batches/2026-01-glasswort-1/fermentation.csv": {
    from: "2026-01-03 17:30", to: "2026-01-17 14:00", everyMinutes: 30, pitchedC: 18.0, rippleC: 0.15,
    settings: [["2026-01-03 17:30", 19.5], ["2026-01-07 20:00", 20.5], ["2026-01-11 20:00", 16, 6], ["2026-01-15 20:00", 1.5, 9]],
    hidden: { original: 1.0517, final: 1.01, halfHours: 39, widthHours: 11 },
  },
  "batches/2026-02-glasswort-2/probe-export.csv": {
    from: "2026-02-14 18:15", to: "2026-03-03 19:15", everyMinutes: 60, pitchedC: 18.6, rippleC: 0.15, format: "probe-export",
    settings: [["2026-02-14 18:15", 19.5], ["2026-02-18 20:00", 20.5], ["2026-02-24 18:00", 10, 7], ["2026-03-01 20:00", 1.6, 9]],
    hidden: { original: 1.054, final: 1.0105, halfHours: 40, widthHours: 11 },
  },
  "batches/2026-04-wrackline/fermentation.csv": {
    from: "2026-04-11 18:00", to: "2026-04-21 09:00", everyMinutes: 60, pitchedC: 18.9, rippleC: 0.15,
    settings: [["2026-04-11 18:00", 19.4], ["2026-04-14 20:00", 20, 5], ["2026-04-19 09:00", 1.6, 7]],
    gravity: { original: 1.0522, final: 1.0105, halfHours: 52, widthHours: 15, noise: STEADY },
    pressure: { shut: "2026-04-15 08:00", heldKpa: 70, opened: "2026-04-21 08:30" },
  },
  "batches/2026-05-glasswort-3/fermentation.csv": {
    from: "2026-05-23 17:40", to: "2026-06-09 19:40", everyMinutes: 60, pitchedC: 19.2, rippleC: 0.2,
    settings: [["2026-05-23 17:40", 19.5], ["2026-05-27 20:00", 20.5], ["2026-06-01 20:00", 17, 5], ["2026-06-07 20:00", 1.6, 7]],
    gravity: {
      original: 1.0551, final: 1.0115, halfHours: 40, widthHours: 11, noise: STEADY, creep: ["2026-06-02 20:00", 0.003, 40],
    },
  },
  "batches/2026-07-fiddler-crab/fermentation.csv": {
    from: "2026-07-04 18:00", to: "2026-07-21 19:00", everyMinutes: 60, pitchedC: 19.4, rippleC: 0.2, format: "fahrenheit",
    settings: [["2026-07-04 18:00", 19.4], ["2026-07-08 20:00", 20.6], ["2026-07-13 20:00", 7.8, 7], ["2026-07-19 20:00", 1.1, 8]],
    gravity: { original: 1.0514, final: 1.0105, halfHours: 41, widthHours: 11, noise: RESTLESS },
  },
  "batches/2026-08-kelp-line/fermentation.csv": {
    from: "2026-08-15 17:15", to: "2026-08-31 18:45", everyMinutes: 30, pitchedC: 19.1, rippleC: 0.2,
    settings: [["2026-08-15 17:15", 19.5], ["2026-08-19 20:00", 20.5], ["2026-08-25 18:00", 14, 6], ["2026-08-29 20:00", 1.6, 7]],
    hidden: { original: 1.0538, final: 1.01, halfHours: 42, widthHours: 12 },
  },
  // In the middle of its dry hop at the log's "today".
  "batches/2026-10-glasswort-4/fermentation.csv": {
    from: "2026-10-03 17:30", to: "2026-10-20 11:30", everyMinutes: 60, pitchedC: 18.7, rippleC: 0.15,
    settings: [["2026-10-03 17:30", 19.5], ["2026-10-07 20:00", 20.5], ["2026-10-15 20:00", 14, 6]],
    gravity: { original: 1.054, final: 1.0106, halfHours: 41, widthHours: 12, noise: STEADY },
  },
};

/** Every log by its path from the log's root. @type {Record<string, LogPlan>} */
export const SEASON_LOGS = { ...QUAYSIDE, ...MUDLARK, ...SALTMARSH };
