import { FIGURE_TABLE, type SeasonReport } from "../../report/index.js";
import { inUsUnits, printedUnit, type UnitSystem } from "../../units/index.js";

/** A column to put on an axis: one value a batch, null where there is none. */
interface ExploreAxis {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly values: readonly (number | null)[];
}

interface ExploreGrouping {
  readonly id: string;
  readonly title: string;
  readonly values: readonly (string | null)[];
}

/** What the page's own script draws from; numbers with the digits that their readings support at most. */
export interface ExploreData {
  readonly batches: readonly { readonly batch: string; readonly slug: string }[];
  readonly axes: readonly ExploreAxis[];
  readonly groupings: readonly ExploreGrouping[];
}

/** Fewer batches give nothing to look at. */
const LEAST = 2;
const DIGITS = 6;

export function exploreData(season: SeasonReport, units: UnitSystem): ExploreData {
  const { rows } = season;
  return {
    batches: rows.map(({ batch, slug }) => ({ batch, slug })),
    axes: [...figureAxes(season, units), ...tastedAxes(season)].filter(({ values }) => values.filter((value) => value !== null).length >= LEAST),
    groupings: groupings(season).filter(({ values }) => new Set(values).size >= LEAST),
  };
}

/** A classic script, which a page opened from disk may load; the text can't end a script element it isn't in. */
export function exploreScript(data: ExploreData): string {
  return `window.gylebookSeason=${JSON.stringify(data).replaceAll("<", "\\u003c").replaceAll("\u2028", "\\u2028").replaceAll("\u2029", "\\u2029")};\n`;
}

function figureAxes({ rows }: SeasonReport, units: UnitSystem): ExploreAxis[] {
  return FIGURE_TABLE.map(({ id, title, unit }) => {
    const us = units === "us" ? inUsUnits(1, unit) : undefined;
    return {
      id, title, unit: us?.unit ?? printedUnit(unit),
      values: rows.map(({ figures }) => {
        const figure = figures[id];
        if (figure === undefined) return null;
        return rounded(us === undefined ? figure.value : usValue(figure.value, unit));
      }),
    };
  });
}

/** Six digits: the text of a US figure is rounded for print, so many of them are asked for by a small half-width. */
function usValue(value: number, unit: string): number {
  return Number((inUsUnits(value, unit, Math.abs(value) * 1e-3)?.value ?? String(value)).replace("−", "-"));
}

function rounded(value: number): number {
  return Number(value.toPrecision(DIGITS));
}

/** Lifts of what was scored, the preference, and how long it waited: from the season's own relations. */
function tastedAxes({ rows, relations, pooled }: SeasonReport): ExploreAxis[] {
  const byBatch = (id: string, title: string, unit: string, points: readonly { readonly batch: string; readonly value: number }[]): ExploreAxis => {
    const values = new Map(points.map(({ batch, value }) => [batch, value]));
    return { id, title, unit, values: rows.map(({ batch }) => { const value = values.get(batch); return value === undefined ? null : rounded(value); }) };
  };
  const preferred = relations.filter(({ y }) => y === "preference-share").flatMap(({ points }) => points.map(({ batch, y }) => ({ batch, value: y })));
  const waited = relations.filter(({ x }) => x === "days-to-tasting").flatMap(({ points }) => points.map(({ batch, x }) => ({ batch, value: x })));
  return [
    ...Object.values(pooled).map(({ attribute, tastings }, index) => byBatch(`lift-${index + 1}`, `Rise in ${attribute}`, "points", tastings.map(({ batch, lift }) => ({ batch, value: lift })))),
    byBatch("preference-share", "Share that preferred after", "%", preferred),
    byBatch("days-to-tasting", "Days to the tasting", "d", waited),
  ];
}

function groupings({ rows, groups }: SeasonReport): ExploreGrouping[] {
  const named = [...new Map(groups.map(({ by, byTitle }) => [by, byTitle]))].map(([by, title]) => {
    const names = new Map(groups.filter((group) => group.by === by).flatMap((group) => group.groups.flatMap(({ name, points }) => points.map(({ batch }) => [batch, name] as const))));
    return { id: by, title, values: rows.map(({ batch }) => names.get(batch) ?? null) };
  });
  return [
    ...named,
    { id: "series", title: "Series", values: rows.map(({ series }) => series ?? null) },
    { id: "style", title: "Style", values: rows.map(({ style }) => style ?? null) },
    { id: "brewer", title: "Brewer", values: rows.map(({ brewer }) => brewer ?? null) },
  ];
}
