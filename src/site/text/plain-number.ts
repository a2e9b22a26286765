/** A bound or a check value, as exact as it was given; thousands set apart from five digits on. */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) return "no bound";
  const [whole = "", rest] = String(value).split(".");
  const grouped = /^-?\d{5,}$/u.test(whole) ? whole.replaceAll(/(?<=\d)(?=(?:\d{3})+$)/gu, "\u202F") : whole;
  return (rest === undefined ? grouped : `${grouped}.${rest}`).replace("-", "−");
}
