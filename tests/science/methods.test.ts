import { existsSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { defineMethod, defineRelation, methodAbouts, methods, methodSubjects, type Described, type MethodInput } from "../../src/science/index.js";
import * as relations from "../../src/science/relations.js";

const camelCase = (id: string) => id.replaceAll(/-(\w)/gu, (_, letter: string) => letter.toUpperCase());

/** Methods whose arguments are plain numbers, one for each input. */
const plainMethods = methods.filter(({ about }) =>
  about.checks.every((check) => check.given.length === about.inputs.length) && !["total", "weighted-mean"].includes(about.id));

/** What a method computes on numbers of our choosing. */
function computeOn({ about, evaluate }: Described, given: readonly number[]): number {
  const part = about.checks[0]?.part;
  return evaluate({ given, gives: 0, within: 0, source: "none", ...(part === undefined ? {} : { part }) });
}

const anyInside = ({ low, high }: MethodInput) => fc.double({ min: low, max: high, noNaN: true });

describe("every method's own checks", () => {
  it.each(methodAbouts)("$id has at least one, with a source, inside its domain", ({ checks, inputs }) => {
    expect(checks.length).toBeGreaterThan(0);
    for (const { source, given, within } of checks) {
      expect(source.trim().length).toBeGreaterThan(10);
      expect(given.length).toBeGreaterThanOrEqual(inputs.length);
      expect(within).toBeGreaterThanOrEqual(0);
    }
  });

  const checks = methods.flatMap((method) =>
    method.about.checks.map((check) => ({ method, check, name: `${method.about.id}(${check.given.join(", ")}) ${check.part ?? ""}` })));

  it.each(checks)("$name gives $check.gives within $check.within", ({ method, check }) => {
    const found = method.evaluate(check);
    expect(Math.abs(found - check.gives), `got ${found}; ${check.source}`).toBeLessThanOrEqual(check.within);
  });
});

describe("the list of methods", () => {
  it("holds every relation once, by subject and then by id", () => {
    expect(methods).toHaveLength(Object.keys(relations).length);
    expect(new Set(methodAbouts.map(({ id }) => id)).size).toBe(methods.length);
    const order = methodAbouts.map(({ subject, id }) => `${String(methodSubjects.indexOf(subject)).padStart(2, "0")} ${id}`);
    expect(order).toEqual(order.toSorted());
  });

  it("knows each relation under the name of its file and of its export", () => {
    for (const [name, { about }] of Object.entries<Described>(relations)) {
      expect(camelCase(about.id)).toBe(name);
      expect(existsSync(new URL(`../../src/science/${about.id}.ts`, import.meta.url)), about.id).toBe(true);
    }
  });

  it.each(methodAbouts)("$id says everything a methods page prints", ({ id, title, says, formula, range, source, inputs, output, model }) => {
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/u);
    for (const text of [title, formula, range, source, output.symbol, output.unit]) expect(text.trim()).not.toBe("");
    expect(says).toMatch(/\.$/u);
    for (const { symbol, meaning, low, high } of inputs) {
      expect(symbol.trim() && meaning.trim()).not.toBe("");
      expect(low).toBeLessThan(high);
    }
    expect(new Set(inputs.map(({ symbol }) => symbol)).size).toBe(inputs.length);
    if (model !== undefined) expect(model.limit > 0 && model.source.length > 10).toBe(true);
  });
});

describe("a relation that would give no number", () => {
  const [about] = methodAbouts;
  if (about === undefined) throw new Error("there are no methods");

  it("throws instead, whether it is a method or has parts", () => {
    const nowhere = defineMethod({ ...about, inputs: [] }, () => NaN);
    const endless = defineMethod({ ...about, inputs: [] }, () => Infinity);
    const inParts = defineRelation(about, () => ({ mean: NaN }), { refuses: () => undefined, read: () => [] });
    for (const relation of [nowhere, endless, inParts]) expect(() => relation()).toThrow(RangeError);
  });
});

describe("outside its domain", () => {
  it.each(plainMethods)("$about.id refuses each input below, above and not a number", (method) => {
    const fine = method.about.checks[0]?.given ?? [];
    for (const [index, { low, high, meaning }] of method.about.inputs.entries()) {
      const beyond = (high - low) * 1e-6;
      for (const value of [low - beyond, high + beyond, NaN, Infinity, -Infinity]) {
        expect(() => computeOn(method, fine.with(index, value)), `${meaning} ${value}`).toThrow(RangeError);
      }
    }
  });

  it.each(methods)("$about.id throws for no input at all or gives a number, never NaN", (method) => {
    let found = 0;
    try {
      found = computeOn(method, []);
    } catch (error) {
      expect(error).toBeInstanceOf(RangeError);
    }
    expect(Number.isFinite(found)).toBe(true);
  });
});

describe("inside its domain", () => {
  it.each(plainMethods)("$about.id gives a finite number or refuses, never NaN", (method) => {
    fc.assert(
      fc.property(fc.tuple(...method.about.inputs.map(anyInside)), (given) => {
        try {
          expect(Number.isFinite(computeOn(method, given))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(RangeError);
        }
      }),
      { numRuns: 200 },
    );
  });
});
