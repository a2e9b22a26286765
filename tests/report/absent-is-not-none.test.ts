import { describe, expect, it } from "vitest";
import { at, batchOf, type Fields } from "./bench-batch.js";

/** A missing key means not recorded; an empty list means there was none. */
const batch = (fields: Fields) => batchOf({ fermenter: "{volume: 20 L}", transfer: `{at: ${at(380)}, volume: 18 L, left: 1 L}`, package: "{into: keg, volume: 17.8 L}", samples: "[]", dumps: "[]", dry_hops: "[]", ...fields });

describe("an empty list", () => {
  it.each([["dry-hop-dose"], ["dry-hop-mass"], ["dry-hop-oil"], ["loss-samples"], ["loss-dumps"]])("makes %s nought, not missing", (id) => {
    expect(batch({}).figures[id]?.value).toBe(0);
  });

  it("of dry hops has no contact and no temperature, and says that there was none", () => {
    const { missing, checks } = batch({});
    for (const id of ["dry-hop-contact", "dry-hop-temperature", "dry-hop-gravity-drop", "dry-hop-ph-rise"]) expect(missing[id]).toBe("there was no dry hop");
    expect(checks.map(({ id }) => id)).not.toContain("contact-time");
  });

  it("lets the ledger close", () => {
    // 20 − 1 − 17.8 L, with nothing drawn off.
    expect(batch({}).figures["loss-unaccounted"]?.value).toBeCloseTo(1.2, 9);
  });

  it("of moves or packages is a batch still in its fermenter", () => {
    expect(batch({ transfer: "[]", package: "[]" })).toMatchObject({ status: "fermenting", packages: [] });
  });
});

describe("a key left out", () => {
  it.each([
    ["dry_hops", "dry-hop-dose"], ["dry_hops", "dry-hop-mass"], ["dry_hops", "dry-hop-contact"], ["samples", "loss-samples"], ["dumps", "loss-dumps"],
    ["samples", "loss-unaccounted"], ["dumps", "loss-unaccounted"],
  ])("%s makes %s missing, and names it", (key, id) => {
    const { figures, missing } = batch({ [key]: undefined });
    expect(figures[id]).toBeUndefined();
    expect(missing[id]).toContain(`${key} isn't recorded (write \`${key}: []\` if there were none)`);
  });

  it("of samples or dumps gives no ledger, and the checks can't tell", () => {
    const { ledger, checks } = batch({ samples: undefined });
    expect(ledger).toEqual([]);
    expect(checks.find(({ id }) => id === "ledger-closes")?.verdict).toBe("unknown");
  });

  it("says nothing twice where several figures lack the same reading", () => {
    const { missing } = batchOf({ fermentation: `{readings: [{at: ${at(200)}, gravity: 1.010}]}`, transfer: `{at: ${at(380)}}` });
    expect(missing["abv"]).toBe("fermenter.gravity isn't recorded");
  });
});
