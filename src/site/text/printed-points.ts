/** Points as judges write them: whole, or to a tenth; a true minus. */
export function printedPoints(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return rounded < 0 ? `−${Math.abs(rounded)}` : String(rounded);
}

const SUFFIX: Readonly<Record<number, string>> = { 1: "st", 2: "nd", 3: "rd" };

/** A place for a column: 1st, 2nd, 11th; "=" where it is shared. */
export function printedPlace({ place, shared = 1 }: { readonly place: number; readonly shared?: number }): string {
  const teen = place % 100 >= 11 && place % 100 <= 13;
  return `${place}${teen ? "th" : SUFFIX[place % 10] ?? "th"}${shared > 1 ? " =" : ""}`;
}
