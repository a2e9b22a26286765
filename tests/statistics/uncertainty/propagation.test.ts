import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  correlation,
  coverageFactor,
  effectiveDegreesOfFreedom,
  exact,
  expandedUncertainty,
  linearCombination,
  meanOfObservations,
  propagate,
  reading,
  rectangular,
  standardUncertainty,
  sumUncertain,
  type Uncertain,
} from "../../../src/statistics/index.js";
import { fixture } from "../fixture.js";

describe("GUM H.1, end-gauge calibration (JCGM 100:2008, table H.1; numbers as quoted in gum_expected.csv)", () => {
  const inputs = [
    reading("standard length", 50_000_623, 25), // nm
    reading("difference", 215, 9.7), // nm
    reading("expansion difference", 0, 0.58e-6), // 1/°C
    reading("expansion", 11.5e-6, 1.2e-6), // 1/°C
    reading("temperature difference", 0, 0.029), // °C
    reading("temperature", -0.1, 0.41), // °C
  ];
  const length = propagate(
    (standard = 0, difference = 0, expansionDifference = 0, expansion = 0, temperatureDifference = 0, temperature = 0) =>
      standard + difference - standard * (expansionDifference * temperature + expansion * temperatureDifference),
    inputs,
  );

  it("gives 50 000 838 nm with a combined uncertainty of 31.71 nm (printed 32)", () => {
    expect(length.value).toBe(50_000_838);
    expect(standardUncertainty(length)).toBeCloseTo(31.71061, 4);
  });

  it("splits it into 25, 9.7, 2.9 and 16.7 nm (printed 25, 9.7, 2.9, 16.6)", () => {
    expect(length.contributions["standard length"]).toBeCloseTo(25, 5);
    expect(length.contributions["difference"]).toBeCloseTo(9.7, 5);
    expect(length.contributions["expansion difference"]).toBeCloseTo(2.9, 3);
    expect(Math.abs(length.contributions["temperature difference"] ?? 0)).toBeCloseTo(16.6752, 3);
  });

  it("lists the two readings without first-order effect with zero (H.1.7 shows that they matter at second order: 34 nm)", () => {
    expect(length.contributions["expansion"]).toBeCloseTo(0, 12);
    expect(length.contributions["temperature"]).toBeCloseTo(0, 12);
  });

  it("has 16.66 effective degrees of freedom, k 2.92 and U 93 nm at 99 % (H.1.6)", () => {
    const degrees = effectiveDegreesOfFreedom(length, {
      "standard length": 18,
      difference: 25.6,
      "expansion difference": 50,
      "temperature difference": 2,
    });
    expect(degrees).toBeCloseTo(16.656, 2);
    const k = coverageFactor(0.99, degrees);
    expect(k).toBeCloseTo(2.9207816, 6);
    expect(expandedUncertainty(length, k)).toBeCloseTo(92.61977, 2);
  });
});

describe("GUM H.2, resistance and reactance from five simultaneous observation sets (JCGM 100:2008, tables H.2 to H.4)", () => {
  const sets = fixture("gum_h2_data");
  const ids = sets.map((_, k) => `set ${k + 1}`);
  const voltage = meanOfObservations(ids, sets.map((row) => row.number("V_volt")));
  const current = meanOfObservations(ids, sets.map((row) => row.number("I_mA") / 1000));
  const phase = meanOfObservations(ids, sets.map((row) => row.number("phi_rad")));
  const resistanceOf = (v = 0, i = 0, phi = 0) => (v / i) * Math.cos(phi);
  const reactanceOf = (v = 0, i = 0, phi = 0) => (v / i) * Math.sin(phi);
  const impedanceOf = (v = 0, i = 0) => v / i;
  const inputs = [voltage, current, phase];
  const resistance = propagate(resistanceOf, inputs);
  const reactance = propagate(reactanceOf, inputs);
  const impedance = propagate(impedanceOf, inputs);

  it("finds the means, their uncertainties and correlations of table H.2", () => {
    expect(voltage.value).toBeCloseTo(4.999, 9);
    expect(standardUncertainty(voltage)).toBeCloseTo(0.0032093613, 9);
    expect(standardUncertainty(current)).toBeCloseTo(0.0094710084e-3, 12);
    expect(standardUncertainty(phase)).toBeCloseTo(0.00075206383, 10);
    expect(correlation(voltage, current)).toBeCloseTo(-0.35531122, 7);
    expect(correlation(voltage, phase)).toBeCloseTo(0.85762421, 7);
    expect(correlation(current, phase)).toBeCloseTo(-0.64511122, 7);
  });

  it.each([
    ["R", resistance, 127.732, 0.0710714],
    ["X", reactance, 219.847, 0.295582], // printed 0.295
    ["Z", impedance, 254.26, 0.236336],
  ] as const)("gives %s of table H.3 with its uncertainty", (_, quantity, value, uncertainty) => {
    expect(quantity.value).toBeCloseTo(value, 3);
    expect(standardUncertainty(quantity)).toBeCloseTo(uncertainty, 5);
  });

  it("carries the correlations -0.588, -0.485 and 0.993 of table H.3", () => {
    expect(correlation(resistance, reactance)).toBeCloseTo(-0.58843, 4);
    expect(correlation(resistance, impedance)).toBeCloseTo(-0.48526, 4);
    expect(correlation(reactance, impedance)).toBeCloseTo(0.99251, 4);
  });

  it.each([
    ["R", resistanceOf, 0.194544],
    ["X", reactanceOf, 0.200909],
    ["Z", impedanceOf, 0.204076],
  ] as const)("is wrong for %s, in either direction, when the sharing is thrown away (gum_expected.csv, computed)", (_, fn, wrong) => {
    const apart = inputs.map((input, index) => reading(`alone ${index}`, input.value, standardUncertainty(input)));
    expect(standardUncertainty(propagate(fn, apart))).toBeCloseTo(wrong, 5);
  });
});

describe("JCGM 101:2008 examples, first order only", () => {
  const four = (uncertainties: readonly number[]): Uncertain =>
    propagate((a = 0, b = 0, c = 0, d = 0) => a + b + c + d, uncertainties.map((u, i) => reading(`x${i}`, 0, u)));

  it("9.2.2 and 9.2.3: four unit inputs give u = 2 and, with k = 1.96, 3.92", () => {
    const sum = four([1, 1, 1, 1]);
    expect(standardUncertainty(sum)).toBeCloseTo(2, 9);
    // 9.2.3 (rectangular inputs) prints 3.88 by Monte Carlo: first order is slightly too wide there.
    expect(expandedUncertainty(sum, coverageFactor(0.95))).toBeCloseTo(3.9199, 3);
  });

  it("9.2.4: one dominant rectangular input gives u = 10.1 (first-order interval 19.9, where 17.0 is right)", () => {
    const sum = four([1, 1, 1, 10]);
    expect(standardUncertainty(sum)).toBeCloseTo(10.149, 3);
    expect(expandedUncertainty(sum, coverageFactor(0.95))).toBeCloseTo(19.89, 2);
  });

  it("9.3 mass calibration: first order gives 0.0539 mg (Monte Carlo 0.0754: it misses the density terms)", () => {
    const deviation = propagate(
      (reference = 0, added = 0, air = 0, weight = 0, referenceDensity = 0) =>
        (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / referenceDensity)) - 100_000,
      [
        reading("reference mass", 100_000, 0.05), // mg
        reading("added mass", 1.234, 0.02), // mg
        reading("air density", 1.2, rectangular(0.1)), // kg/m³
        reading("weight density", 8000, rectangular(1000)),
        reading("reference density", 8000, rectangular(50)),
      ],
    );
    expect(deviation.value).toBeCloseTo(1.234, 9);
    expect(standardUncertainty(deviation)).toBeCloseTo(0.053852, 5);
  });
});

describe("invented examples with shared inputs (gum_expected.csv; invented, computed there)", () => {
  const original = reading("original gravity", 1.052, 0.0005);
  const final = reading("final gravity", 1.011, 0.0005);

  it("a gravity difference: 131.25 × 0.0005 × √2", () => {
    const difference = propagate((og = 0, fg = 0) => 131.25 * (og - fg), [original, final]);
    expect(difference.value).toBeCloseTo(5.38125, 9);
    expect(standardUncertainty(difference)).toBeCloseTo(0.092807765, 8);
  });

  it("an attenuation ratio", () => {
    const ratio = propagate((og = 0, fg = 0) => (og - fg) / (og - 1), [original, final]);
    expect(ratio.value).toBeCloseTo(0.78846154, 8);
    expect(standardUncertainty(ratio)).toBeCloseTo(0.0098281674, 8);
  });
});

describe("propagate, by what must hold", () => {
  it("counts a reading used twice once: x − x is certain", () => {
    const x = reading("x", 5, 0.1);
    expect(standardUncertainty(propagate((a = 0, b = 0) => a - b, [x, x]))).toBeCloseTo(0, 12);
    expect(standardUncertainty(sumUncertain([x, x]))).toBeCloseTo(0.2, 12);
  });

  it("gives the same through one step or two (a figure computed from figures)", () => {
    const a = reading("a", 3, 0.02);
    const b = reading("b", 7, 0.05);
    const product = propagate((x = 0, y = 0) => x * y, [a, b]);
    const twoSteps = propagate((p = 0, x = 0) => p / x, [product, a]);
    expect(standardUncertainty(twoSteps)).toBeCloseTo(0.05, 7); // = u(b): a cancels
    expect(twoSteps.contributions["a"]).toBeCloseTo(0, 7);
  });

  it("takes a one-sided difference at the edge of the domain", () => {
    const atTop = (x = 0): number => {
      if (x > 1) throw new RangeError("above 1");
      return 3 * x;
    };
    const atBottom = (x = 0): number => {
      if (x < 1) throw new RangeError("below 1");
      return 3 * x;
    };
    const one = reading("x", 1, 0.1);
    expect(propagate(atTop, [one]).contributions["x"]).toBeCloseTo(0.3, 9);
    expect(propagate(atBottom, [one]).contributions["x"]).toBeCloseTo(0.3, 9);
  });

  it("treats a non-finite side like an edge, and refuses a non-finite value", () => {
    expect(propagate((x = 0) => (x > 1 ? Number.NaN : 2 * x), [reading("x", 1, 0.1)]).contributions["x"]).toBeCloseTo(0.2, 9);
    expect(() => propagate((x = 0) => 1 / x, [reading("x", 0, 0.1)])).toThrow(RangeError);
  });

  it("refuses a function defined at a single point, and lets other errors through", () => {
    const pin = (x = 0): number => {
      if (x !== 1) throw new RangeError("only at 1");
      return x;
    };
    expect(() => propagate(pin, [reading("x", 1, 0.1)])).toThrow(/neither side/);
    expect(() => propagate(() => { throw new TypeError("bug"); }, [])).toThrow(TypeError);
    const bugBeside = (x = 0): number => {
      if (x !== 1) throw new TypeError("bug");
      return x;
    };
    expect(() => propagate(bugBeside, [reading("x", 1, 0.1)])).toThrow(TypeError);
  });

  it("skips exact inputs without touching the function beside them", () => {
    const pin = (x = 0, y = 0): number => {
      if (x !== 1) throw new RangeError("only at 1");
      return x + y;
    };
    expect(propagate(pin, [exact(1), reading("y", 2, 0.3)]).contributions["y"]).toBeCloseTo(0.3, 9);
  });

  it("keeps an id that looks like an object's inner part as an ordinary key", () => {
    const odd = reading("__proto__", 2, 0.1);
    expect(standardUncertainty(linearCombination([3], [odd]))).toBeCloseTo(0.3, 12);
  });

  it("survives JSON", () => {
    const x = propagate((a = 0) => a * a, [reading("a", 3, 0.1)]);
    expect(standardUncertainty(JSON.parse(JSON.stringify(x)) as Uncertain)).toBeCloseTo(0.6, 9);
  });

  const positive = fc.double({ min: 0.1, max: 10, noNaN: true });
  it("agrees with the exact formula for products and quotients: relative uncertainties add in squares (GUM 5.1.6)", () => {
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        const quotient = propagate((x = 0, y = 0) => x / y, [reading("a", a, 0.01 * a), reading("b", b, 0.02 * b)]);
        expect(standardUncertainty(quotient) / quotient.value).toBeCloseTo(Math.hypot(0.01, 0.02), 8);
      }),
    );
  });

  it("does not depend on the order of the inputs", () => {
    fc.assert(
      fc.property(positive, positive, (a, b) => {
        const [x, y] = [reading("a", a, 0.1), reading("b", b, 0.2)];
        const forward = propagate((p = 0, q = 0) => p * Math.exp(-q), [x, y]);
        const backward = propagate((q = 0, p = 0) => p * Math.exp(-q), [y, x]);
        expect(standardUncertainty(forward)).toBeCloseTo(standardUncertainty(backward), 10);
      }),
    );
  });
});

describe("correlation", () => {
  it("is 0 without a shared reading, 1 with itself, −1 with its negative", () => {
    const [a, b] = [reading("a", 1, 0.1), reading("b", 1, 0.1)];
    expect(correlation(a, b)).toBe(0);
    expect(correlation(a, a)).toBeCloseTo(1, 12);
    expect(correlation(a, linearCombination([-2], [a]))).toBeCloseTo(-1, 12);
  });

  it("refuses exact values", () => {
    expect(() => correlation(exact(1), reading("a", 1, 0.1))).toThrow(RangeError);
  });
});

describe("bad input throws RangeError", () => {
  it.each([
    ["an unnamed reading", () => reading("", 1, 0.1)],
    ["a negative uncertainty", () => reading("a", 1, -0.1)],
    ["an infinite uncertainty", () => reading("a", 1, Infinity)],
    ["a value that is no number", () => reading("a", Number.NaN, 0.1)],
    ["an exact value that is no number", () => exact(Number.NaN)],
    ["a negative limit", () => rectangular(-1)],
    ["one observation", () => meanOfObservations(["a"], [1])],
    ["two observations of one id", () => meanOfObservations(["a", "a"], [1, 2])],
    ["an observation that is no number", () => meanOfObservations(["a", "b"], [1, Number.NaN])],
    ["weights that do not match", () => linearCombination([1, 2], [exact(1)])],
    ["a weight that is no number", () => linearCombination([Number.NaN], [exact(1)])],
    ["a coverage factor of zero", () => expandedUncertainty(exact(1), 0)],
    ["less than one degree of freedom", () => coverageFactor(0.95, 0.5)],
    ["a level of 1", () => coverageFactor(1, 5)],
    ["no degrees of freedom", () => effectiveDegreesOfFreedom(reading("a", 1, 1), { a: 0 })],
  ])("%s", (_, act) => {
    expect(act).toThrow(RangeError);
  });
});
