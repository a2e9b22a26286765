export {
  CO2_GRAMS_PER_VOLUME, differenceFromOwnUnit, differenceToOwnUnit, EBC_PER_SRM, fromOwnUnit, OWN_UNIT, QUANTITY_KINDS, toOwnUnit, unitNamed, UNITS, unitsOf,
  type QuantityKind, type Unit,
} from "./unit-table.js";
export { parseDifference, parseQuantity, type ParsedQuantity, type Quantity, type QuantityFault } from "./quantity.js";
export { decimalsFor, differenceInUsUnits, formatNumber, inUsUnits, type FormattedNumber, type UnitSystem } from "./format.js";
export { printedUnit } from "./print-number.js";
export { wordsInUnits } from "./words-in-units.js";
