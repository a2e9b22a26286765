import { isForced } from "./figures/package.js";
import type { Scene } from "./scene.js";
import type { CautionReport, CheckReport } from "./types.js";

/** What can hurt somebody, each in one place, so that a page says it once and in the same words everywhere. */
export const CAUTION = {
  collapse: "A sealed vessel can collapse as it cools. Feed it with gas at low pressure or leave a way in, and keep to what its maker allows: many plastic and some steel fermenters stand next to no vacuum.",
  pressure: "Whatever is computed here, the limit stamped on the vessel, on its valve and on the regulator is the one that counts. Keep to local codes, and have pressure gear checked by those licensed to.",
  bottles: "Bottles can burst: use ones made for pressure, without chips, keep them cool, cover them, and open a test bottle early.",
  gas: "Carbon dioxide gathers low in closed rooms and can't be seen or smelt: ferment, purge and vent with air moving through the room, and never put your head into a vessel.",
  foam: "Hops dropped into gassy beer can make it foam over, or lift the pressure of a closed vessel: let the gas out first, add them slowly, and keep the way out for gas clear.",
  dust: "Hop dust irritates eyes, skin and lungs: open bags away from your face, in still air, with a mask if it troubles you.",
  dogs: "Spent hops can kill a dog, from the kettle or the fermenter: keep slurry, bags and compost out of reach, and call a vet at once if one has eaten any.",
  ice: "Ice takes up room and can block or burst what holds it; don't open or pressurise a frozen vessel.",
  creep: "Beer that still ferments builds pressure in a closed keg or bottle: hold it until two readings a few days apart agree, test for diacetyl again, and keep to the vessel's rating.",
  cleaners: "Cleaners and sanitisers: follow the maker's label on strength, gloves and rinsing, and never mix them.",
  scald: "Hot liquor scalds: move it slowly, with dry gloves and a clear floor.",
} as const;

/** Cautions that no check tells: each where its number stands, and only where the batch has to do with it. */
export function cautionReports(scene: Scene, checks: readonly CheckReport[]): CautionReport[] {
  const told = new Set(checks.map(({ caution }) => caution));
  const found: readonly (readonly [keyof typeof CAUTION, CautionReport["part"], boolean])[] = [
    ["collapse", "what-happened", scene.isOpen && scene.batch.crash === undefined && scene.batch.plan?.crash !== undefined],
    ["dust", "dry-hop", hasDryHops(scene)],
    ["foam", "dry-hop", hasDryHops(scene)],
    ["dogs", "ledger", hasDryHops(scene) || (scene.batch.hops ?? []).length > 0],
    ["gas", "package", usesGas(scene)],
    ["pressure", "package", scene.isOpen && scene.packages.length === 0 && scene.batch.plan?.carbonation !== undefined],
    ["bottles", "aim", scene.isOpen && scene.packages.length === 0 && scene.batch.plan?.carbonation !== undefined],
  ];
  return found.filter(([id, , bears]) => bears && !told.has(CAUTION[id])).map(([id, part]) => ({ id, part, says: CAUTION[id] }));
}

function hasDryHops({ batch }: Scene): boolean {
  return (batch.dryHops ?? []).length > 0 || batch.dryHops === undefined && (batch.plan?.dryHop?.value ?? 0) > 0;
}

/** Beer that gives off gas, will, or is moved with it; a finished batch in bottles is past that. */
function usesGas(scene: Scene): boolean {
  const { batch, packages } = scene;
  return scene.isOpen || batch.crash?.vent === "gas" || packages.some(({ entry }) => isForced(entry) || entry.purge !== undefined);
}
