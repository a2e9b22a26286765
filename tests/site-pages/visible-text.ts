/** Tags that begin a line of their own; the others run on in the text. */
const BLOCKS = "p|div|li|ul|ol|td|th|tr|table|caption|h1|h2|h3|h4|section|header|footer|nav|summary|details|figure|figcaption|article|main|blockquote|dt|dd|dl|text|svg";
const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'", nbsp: "\u00A0" };

/**
 * What a page shows, a line for each block. Left out: what is quoted from a record as it was written (the
 * brewer's notes and aim, and “…” after "written"), since quotations keep their own units; and the relations'
 * formulas, whose symbols stand for metric numbers.
 */
export function visibleLines(html: string): string[] {
  const body = html.slice(html.indexOf("<body"))
    .replaceAll(/<(?:script|style)\b[\s\S]*?<\/(?:script|style)>/gu, "")
    .replaceAll(/<blockquote class="aim-words"[\s\S]*?<\/blockquote>/gu, "")
    .replaceAll(/<h2>In the brewer’s words<\/h2>[\s\S]*?<\/section>/gu, "")
    .replaceAll(/<div class="notes"[\s\S]*?<\/section>/gu, "")
    .replaceAll(/<p class="formula">[\s\S]*?<\/p>|: <i>[\s\S]*?<\/i>/gu, "")
    .replaceAll(/written “<bdi>[^<]*<\/bdi>”/gu, "written “…”");
  return body.replaceAll(new RegExp(`</?(?:${BLOCKS})\\b[^>]*>`, "gu"), "\n").replaceAll(/<[^>]*>/gu, "")
    .replaceAll(/&([#\w]+);/gu, (whole, name: string) => ENTITIES[name] ?? whole)
    .split("\n").map((line) => line.trim()).filter((line) => line !== "");
}

/** Metric quantities that stand first: not in the brackets behind the same in US units. */
export function metricFirst(line: string): string[] {
  const metric = /(?<![\p{L}\p{N}./])\d+(?:\.\d+)?[ \u00A0](?:°C(?:\/h)?|g\/L|L\/kg|L\/h|mL|L|kg|g|kPa|bar|EBC|mm\/h|cm|kJ\/100[ \u00A0]mL)(?![\p{L}\p{N}/])/gu;
  return [...line.matchAll(metric)].filter((match) => {
    const before = line.slice(0, match.index);
    const opened = before.lastIndexOf("(");
    const inBrackets = opened >= 0 && !before.slice(opened).includes(")") && /^\((?:[−\d. \u00A0]|to|±|°C(?:\/h)?|g\/L|L\/kg|kPa|EBC|kg|g|L)*$/u.test(before.slice(opened));
    return !(inBrackets && /(?:°F(?:\/h)?|oz\/gal|gal\/lb|gal\/h|gal|lb|oz|psi|SRM|in\/h|in|fl[ \u00A0]oz)[ \u00A0]$/u.test(before.slice(0, opened)));
  }).map((match) => match[0]);
}
