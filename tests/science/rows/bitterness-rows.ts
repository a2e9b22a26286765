import { bitternessTinseth, isomerisationRate } from "../../../src/science/index.js";
import { toOwnUnit } from "../../../src/units/index.js";
import { named, numberAt, type RowComputations } from "./reading.js";

export const bitternessRows: RowComputations = {
  // 10 % of 10 kg is 1 kg of alpha acids; in 1000 L that is 1000 mg/L, of which the utilisation is the share.
  "Tinseth utilisation": (inputs) => bitternessTinseth(10, 10_000, named(inputs, "t"), named(inputs, "OG"), 1000) / 1000,
  "Tinseth IBU": (inputs) =>
    bitternessTinseth(numberAt(inputs, 1), toOwnUnit(numberAt(inputs, 0), "oz"), numberAt(inputs, 2), numberAt(inputs, 3), toOwnUnit(numberAt(inputs, 4), "gal")),
  "k1 isomerisation": (inputs) => isomerisationRate(numberAt(inputs, 0)),
  "relative isomerisation rate vs 100 C": (inputs) => isomerisationRate(numberAt(inputs, 0)) / isomerisationRate(100),
};
