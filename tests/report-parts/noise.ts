import type { BatchReport } from "../../src/report/types.js";
import { seededUniform } from "../report/seeded-uniform.js";
import { brewedOn, figure, liftTasting, reportOf } from "./reports.js";

/** Uniform and normal numbers from one seed. */
export interface Chance {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly pick: <Item>(items: readonly [Item, ...Item[]]) => Item;
}

export function chanceFrom(seed: number): Chance {
  const uniform = seededUniform(seed);
  return {
    uniform,
    // Box and Muller; 1 − u is never 0.
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    pick: (items) => items[Math.floor(uniform() * items.length)] ?? items[0],
  };
}

/** A whole season in which nothing depends on anything, but the loss on the dose where a slope is planted, L per g/L. */
export function noisySeason(chance: Chance, n: number, plantedSlope = 0): BatchReport[] {
  const { uniform, normal, pick } = chance;
  return Array.from({ length: n }, (_, index) => {
    const dose = 12 * uniform();
    const lift = (): readonly number[] => { const mean = 0.4 * normal(); return [mean - 1, mean, mean + 1]; };
    const before = 1 + Math.floor(9 * uniform());
    return reportOf(`B-${String(index).padStart(2, "0")}`, {
      brewed: brewedOn(index), packaged: brewedOn(index + 1), equipment: pick(["forty", "thirty", "seven"]),
      recipe: { ...reportOf("x").recipe, yeast: { what: pick(["English ale", "American ale"]), amount: "11 g", detail: "" } },
      dryHops: [{ hop: pick(["Cascade", "Centennial", "Chinook"]), slug: "x", form: pick(["pellet", "cone"]), into: "fermenter", grams: 80, added: "2026-03-18", notes: [] }],
      figures: {
        "dry-hop-dose": figure(dose, "g/L"), "dry-hop-temperature": figure(12 + 4 * normal(), "C"), "dry-hop-contact": figure(2 + 5 * uniform(), "d"),
        "loss-total": figure(2 + plantedSlope * dose + 0.3 * normal(), "L"), "dry-hop-gravity-drop": figure(0.001 * normal(), "SG"),
        "dry-hop-ph-rise": figure(0.1 + 0.05 * normal(), "pH"),
        "transfer-efficiency": figure(90 + normal(), "%"), "brewhouse-efficiency": figure(72 + normal(), "%"), "apparent-attenuation": figure(78 + normal(), "%"),
      },
      tastings: [{
        ...liftTasting("orange peel", lift()), attributes: [...liftTasting("orange peel", lift()).attributes, ...liftTasting("bitterness", lift()).attributes],
        date: brewedOn(index + 2 + Math.floor(2 * uniform())), preference: { before, after: 10 - before, none: 0, p: 1, share: (10 - before) / 10 },
      }],
    });
  });
}
