import type { Batch, BatchRecord, CivilTime, Log } from "../records/index.js";
import { batchReport } from "./batch-report.js";
import { SERVING_RULES } from "./serving-rules.js";
import { isOpen } from "./tasting-open.js";
import { settledTasting, type SettledTasting, type Tasting } from "./tasting-plan-defaults.js";
import { contentsOf } from "./tasting-plan-contents.js";
import { plannedDrink } from "./tasting-plan-drink.js";
import { testOptions } from "./tasting-plan-options.js";
import { cupsOf, dealRounds } from "./tasting-plan-rounds.js";
import { roundsAsked } from "./tasting-plan-tests.js";
import { differencesToCome, keptCautions, tastingRoles } from "./tasting-samples.js";
import { planWhy } from "./tasting-plan-why.js";
import type { BatchReport, CountedTest, TastingPlan } from "./types.js";

/**
 * The tastings a record plans, those without any result, ready to be poured; where it plans none, one
 * that suggests itself from the aim and what was held back.
 */
export function tastingPlans(record: BatchRecord, log: Log, asOf: CivilTime): TastingPlan[] {
  const written = record.data.tastings ?? [];
  const open = written.flatMap((tasting, index) => (isOpen(tasting) ? [{ tasting, number: index + 1 }] : []));
  const reportOf = reportsOf(log, asOf);
  if (open.length > 0) return open.map(({ tasting, number }) => tastingPlan(record, tasting, number, log, reportOf));
  const suggested = tastingPlan(record, { public: true }, written.length + 1, log, reportOf);
  return [{ ...suggested, filledIn: [written.length === 0 ? SUGGESTED : `${SUGGESTED} Those in the record have their results.`, ...suggested.filledIn] }];
}

const SUGGESTED = "The record plans no tasting: this one is a suggestion. Write it under tastings: (without results) before anyone pours.";

function reportsOf(log: Log, asOf: CivilTime): (batch: string) => BatchReport | undefined {
  return (batch) => {
    const record = log.batches.find(({ data }) => data.batch === batch);
    return record === undefined ? undefined : batchReport(record, log, asOf).report;
  };
}

function tastingPlan(record: BatchRecord, tasting: Tasting, number: number, log: Log, reportOf: (batch: string) => BatchReport | undefined): TastingPlan {
  const { data } = record;
  const settled = settledTasting(record, tasting, log);
  const asked = roundsAsked(tasting, settled, data.aim);
  const seed = tasting.seed ?? `${data.batch}, tasting ${number}`;
  const rounds = dealRounds(asked, settled.samples, settled.tasters, seed);
  const cups = asked.reduce((total, { kind }) => total + cupsOf(kind, settled.samples.length), 0);
  const chosen = new Set(asked.flatMap(({ kind }): CountedTest[] => (kind === "scores" || kind === "ranking" ? [] : [kind])));
  const attribute = asked.find(({ kind }) => kind === "pair")?.attribute ?? settled.attributes[0];
  const options = settled.samples.length > 2 ? [] : testOptions(settled.tasters, attribute, data.aim, chosen);
  const date = (tasting.date ?? data.plan?.dates?.tasting)?.text;
  return {
    number, name: tasting.name ?? `Tasting ${number}`,
    ...(date === undefined ? {} : { date }),
    filledIn: settled.filledIn, asked: settled.asked, tasters: settled.tasters, samples: settled.samples, seed,
    why: planWhy(settled, asked, options, data.aim),
    options, rounds,
    contains: contentsOf(settled.samples, record, log),
    drink: plannedDrink(cups, settled.samples, data.batch, reportOf),
    rules: SERVING_RULES,
    ...comparability(data, tasting, settled),
  };
}

/** What the record already shows of how the samples differ, while it can still be put right. */
function comparability(batch: Batch, tasting: Tasting, { samples }: SettledTasting): Pick<TastingPlan, "notAlike" | "cautions"> {
  const poured = { ...tasting, samples: samples.map(({ name, drawnFrom }) => ({ sample: name, value: drawnFrom })) };
  const roles = tastingRoles(poured);
  return { notAlike: differencesToCome(batch, poured, roles), cautions: keptCautions(batch, poured, roles) };
}
