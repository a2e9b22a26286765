export { about, refuse, type FieldAbout, type Refusal } from "./about.js";
export { choice, text, texts, yesNo } from "./words.js";
export { count, number, numberRange } from "./numbers.js";
export { difference, massOrVolume, quantity, quantityRange, type QuantityRange } from "./quantities.js";
export { civilTime, datePattern, timeZone } from "./dates.js";
export { fields, fileName, list, MOST_TASTERS, named, oneOrList } from "./groups.js";
