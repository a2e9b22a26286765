import type { BatchReport, TastedElsewhere } from "./types.js";

/**
 * Adds to each batch the tastings of other batches in which its beer was poured, so that a result shows
 * on both pages. A batch that was poured nowhere else stays the same object, and so does one whose
 * tastings elsewhere haven't changed.
 */
export function withTastingsElsewhere(reports: readonly BatchReport[]): BatchReport[] {
  const poured = new Map<string, TastedElsewhere[]>();
  for (const { batch: host, slug, title, tastings } of reports) {
    tastings.forEach((tasting, index) => {
      for (const guest of guestsOf(tasting.samples, host)) {
        poured.set(guest, [...poured.get(guest) ?? [], { batch: host, slug, title, number: index + 1, tasting }]);
      }
    });
  }
  return reports.map((report) => completed(report, poured.get(report.batch)));
}

/** Batches other than its own whose beer a tasting poured, each once. */
function guestsOf(samples: Readonly<Record<string, string>>, host: string): string[] {
  const batches = Object.values(samples).flatMap((drawn) => (drawn.includes("/") ? [drawn.slice(0, drawn.lastIndexOf("/"))] : []));
  return [...new Set(batches)].filter((batch) => batch !== host);
}

const held = new WeakMap<BatchReport, { readonly elsewhere: readonly TastedElsewhere[]; readonly report: BatchReport }>();

function completed(report: BatchReport, elsewhere: readonly TastedElsewhere[] | undefined): BatchReport {
  if (elsewhere === undefined) return report;
  const known = held.get(report);
  if (known !== undefined && sameTastings(known.elsewhere, elsewhere)) return known.report;
  const made = { ...report, tastedElsewhere: elsewhere };
  held.set(report, { elsewhere, report: made });
  return made;
}

function sameTastings(one: readonly TastedElsewhere[], other: readonly TastedElsewhere[]): boolean {
  return one.length === other.length && one.every(({ tasting, title }, index) => tasting === other[index]?.tasting && title === other[index].title);
}
