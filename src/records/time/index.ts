export { parseCivilTime, type CivilTime } from "./civil-time.js";
export { civilAt, instantMs, skippedHour, wallMs } from "./instant.js";
export { parseDatePattern, type ParsedPattern, type TimeReader } from "./date-pattern.js";
export { readPlainTime, rowInstant } from "./log-time.js";
