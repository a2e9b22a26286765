import { EBC_PER_SRM } from "../units/index.js";
import { input } from "./input.js";
import { defineMethod } from "./method.js";

const worked = "deLange's average spectrum worked out apart, SRM 10 through 1 cm; coefficients from memory";
const ebcOfSrm10 = 10 * EBC_PER_SRM;

/** Share of light of one wavelength that passes through beer. */
export const beerTransmission = defineMethod(
  {
    id: "beer-transmission",
    title: "Light through beer",
    subject: "color",
    says: "The share of light of one wavelength that passes through beer of this colour: the average spectrum of 99 beers, fruit beers among them, so a little redder than malt alone.",
    inputs: [
      { symbol: "λ", meaning: "wavelength", unit: "nm", low: 380, high: 780 },
      input.color("C", "colour of the beer"),
      { symbol: "d", meaning: "width of the glass", unit: "cm", low: 0, high: 20 },
    ],
    output: { symbol: "T", unit: "share" },
    formula: "T = 10^(-(C/25) d (0.02465 e^(-(λ-430)/17.591) + 0.97535 e^(-(λ-430)/82.122)))",
    range: "clear beer, 380 to 780 nm; haze scatters and is left out",
    source: "deLange, chapter in Bamforth (ed.), Brewing Materials and Processes (2016); not seen, coefficients from memory",
    status: "from memory",
    checks: [
      { given: [430, ebcOfSrm10, 1], gives: 0.1632, within: 0.0005, source: "definition of SRM: 12.7 times the absorbance at 430 nm through 1 cm, so 10^(-10/12.7)" },
      { given: [550, ebcOfSrm10, 1], gives: 0.6635, within: 0.0005, source: worked },
      { given: [700, ebcOfSrm10, 1], gives: 0.9361, within: 0.0005, source: worked },
    ],
  },
  (wavelengthNm: number, colorEbc: number, pathCm: number) => {
    const beyond = wavelengthNm - 430;
    const shape = 0.02465 * Math.exp(-beyond / 17.591) + 0.97535 * Math.exp(-beyond / 82.122);
    // Colour in EBC is 25 times the absorbance of 1 cm at 430 nm, by definition.
    return 10 ** (-(colorEbc / 25) * pathCm * shape);
  },
);
