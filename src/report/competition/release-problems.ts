import { problemAt, type Problem } from "../../problems/index.js";
import type { CivilTime, CompetitionRecord, Log } from "../../records/index.js";
import { counted } from "../season-words.js";
import { isReleased } from "./released.js";

const LISTED = 8;

/** Warns of competitions whose release is past while agreed scores are missing. Apart from the records' own checks, since it depends on the day. */
export function releaseProblems({ competitions, club }: Log, asOf: CivilTime): Problem[] {
  return competitions.filter((record) => isReleased(record, asOf, club.zone)).flatMap((record) => {
    const missing = withoutScore(record);
    if (record.entries.length > 0 && missing.length === 0) return [];
    return [problemAt("competition/released-incomplete", { file: record.file, line: 1, column: 1, field: "release", found: record.data.release?.text ?? "" }, { missing: missingWords(record, missing) })];
  });
}

function withoutScore({ entries, finals }: CompetitionRecord): string[] {
  const scored = new Set(finals.filter(({ score }) => score !== undefined).map(({ code }) => code));
  return entries.filter(({ code }) => code === undefined || !scored.has(code)).map(({ entry }) => entry);
}

function missingWords({ entries }: CompetitionRecord, missing: readonly string[]): string {
  if (entries.length === 0) return "no entries";
  return missing.length === entries.length || missing.length > LISTED ? `no agreed score for ${counted(missing.length, "entry", "entries")}` : `no agreed score for ${missing.join(", ")}`;
}
