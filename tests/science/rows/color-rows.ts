import { beerColor, beerTransmission, beerTristimulus, colorMorey } from "../../../src/science/index.js";
import { EBC_PER_SRM, toOwnUnit } from "../../../src/units/index.js";
import { named, type RowComputations } from "./reading.js";

const ebcOf = (inputs: string) => toOwnUnit(named(inputs, "SRM"), "SRM");
/** The colour for which 1 cm has the absorbance asked at 430 nm. */
const ebcOfAbsorbance = (absorbance: number) => absorbance / -Math.log10(beerTransmission(430, 1, 1));

export const colorRows: RowComputations = {
  "Morey SRM": (inputs) => colorMorey(named(inputs, "MCU")) / EBC_PER_SRM,
  "SRM from A430": (inputs) => ebcOfAbsorbance(named(inputs, "A430(1 cm)")) / EBC_PER_SRM,
  "EBC from A430": (inputs) => ebcOfAbsorbance(named(inputs, "A430(1 cm)")),
  "EBC = SRM*25/12.7 (1.9685)": ebcOf,
  "SRM = 1.3546 L - 0.76": (inputs) => toOwnUnit(named(inputs, "L"), "Lovibond") / EBC_PER_SRM,
  "deLange transmission": (inputs) => beerTransmission(named(inputs, "lambda"), ebcOf(inputs), named(inputs, "path")),
  "CIE 1931 Y (D65, 380-780/5 nm)": (inputs) => beerTristimulus(ebcOf(inputs), named(inputs, "path")).y,
  "sRGB (clipped, IEC 61966-2-1)": (inputs) => {
    const { r, g, b } = beerColor(ebcOf(inputs), named(inputs, "path"));
    return [r, g, b];
  },
};
