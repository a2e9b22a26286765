/** Points as a judge writes them: whole, or to a tenth. */
export function points(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return `${rounded < 0 ? "−" : ""}${Math.abs(rounded)}`;
}
