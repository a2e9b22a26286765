export type { Problem, Severity } from "./problem.js";
export { problemKinds, type Given, type ProblemCode, type ProblemKind } from "./catalogue.js";
export { problemAt, type Place } from "./problem-at.js";
export { folded, nearestName } from "./nearest-name.js";
export { countLine, formatProblems, type ProblemFormat } from "./print.js";
