import { formatNumber } from "../units/index.js";
import type { AimReport, BatchReport, CheckReport, FigureReport, NextStep } from "./types.js";

type Told = Pick<BatchReport, "status" | "style" | "recipe" | "figures" | "planned" | "checks" | "next"> & { readonly aim?: AimReport };

/** What was tried and whether it worked, in a few sentences made from the figures alone; no verdict before there is a tasting. */
export function summaryOf(batch: Told): string {
  const parts = batch.status === "planned" ? [plannedSentence(batch)] : [madeSentence(batch), hopsSentence(batch)];
  const verdict = batch.aim?.result === undefined ? undefined : batch.aim.verdict;
  return [...parts, verdict, trouble(batch.checks), nextSentence(batch.next)].filter((part) => part !== undefined && part !== "").join(" ");
}

function plannedSentence(batch: Told): string {
  const abv = text(batch.planned["abv"]);
  const dose = text(batch.planned["dry-hop-dose"]);
  const what = `Planned${batch.style === undefined ? "" : `: ${batch.style}`}`;
  const details = [abv === undefined ? undefined : `${abv} alcohol`, dose === undefined ? undefined : `dry-hopped at ${dose}`].filter((part) => part !== undefined);
  return details.length === 0 ? `${what}.` : `${what}, ${details.join(", ")}.`;
}

function madeSentence(batch: Told): string | undefined {
  const abv = text(batch.figures["abv"]);
  const original = text(batch.figures["original-gravity"]);
  const final = text(batch.figures["final-gravity"]);
  const latest = text(batch.figures["latest-gravity"]);
  const kind = batch.style ?? "Beer";
  if (abv !== undefined) return `${kind} of ${abv} alcohol, from ${original ?? ""} to ${final ?? ""}.`;
  if (latest !== undefined && original !== undefined) return `${kind} at ${latest} so far, from ${original}.`;
  return original === undefined ? undefined : `${kind} from ${original}.`;
}

function hopsSentence(batch: Told): string | undefined {
  const dose = batch.figures["dry-hop-dose"];
  if (dose === undefined) return undefined;
  if (dose.value === 0) return "Not dry-hopped.";
  const hops = [...new Set(batch.recipe.dryHops.map((line) => line.what))].join(" and ");
  const contact = text(batch.figures["dry-hop-contact"]);
  const temperature = text(batch.figures["dry-hop-temperature"]);
  return [`Dry-hopped with ${hops} at ${text(dose) ?? ""}`, contact === undefined ? "" : ` for ${contact}`, temperature === undefined ? "" : ` at ${temperature}`, "."].join("");
}

/** The checks that failed, named; nothing when none did. */
function trouble(checks: readonly CheckReport[]): string | undefined {
  const failed = checks.filter((check) => check.verdict === "fail");
  return failed.length === 0 ? undefined : `Look at: ${failed.map((check) => check.title.toLowerCase()).join(", ")}.`;
}

function nextSentence(next: readonly NextStep[]): string | undefined {
  const first = next.find((step) => step.state === "blocked" || step.state === "overdue") ?? next.find((step) => step.state === "due");
  return first === undefined ? undefined : first.state === "blocked" ? first.says : `Next: ${first.step.toLowerCase()}, ${first.when}.`;
}

function text(figure: Pick<FigureReport, "value" | "unit" | "plusMinus"> | undefined): string | undefined {
  if (figure === undefined) return undefined;
  const { value, unit } = formatNumber(figure.value, figure.unit, figure.plusMinus);
  return unit === "%" ? `${value} %` : `${value} ${unit}`.trim();
}
