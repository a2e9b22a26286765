import { describe, expect, it } from "vitest";
import { CHART_CSS, CHART_TOKENS } from "../../src/charts/index.js";
import { COLOURS } from "../../src/charts/theme.js";

/** The papers of the two themes: warm white and near black. */
const PAPER = { light: "#fbf8f1", dark: "#191713" } as const;

/** Relative luminance and contrast ratio: WCAG 2.1, definitions of "relative luminance" and "contrast ratio" (W3C 2018). */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((from) => {
    const share = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
    return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const themes = ["light", "dark"] as const;
const series = ["--chart-1", "--chart-2", "--chart-3"] as const;

describe("the inks", () => {
  it("are measured by a formula that gives black on white 21 and #767676 on white 4.54 (WCAG 2.1, understanding 1.4.3)", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
  });

  it.each(themes.flatMap((theme) => series.map((token) => ({ theme, token }))))("of series keep 3:1 on $theme paper and on a shaded phase: $token", ({ theme, token }) => {
    expect(contrast(CHART_TOKENS[theme][token], PAPER[theme])).toBeGreaterThanOrEqual(3);
    expect(contrast(CHART_TOKENS[theme][token], CHART_TOKENS[theme]["--chart-shade"])).toBeGreaterThanOrEqual(3);
  });

  it.each(themes)("of letters keep 4.5:1 on %s paper and on a shaded phase", (theme) => {
    for (const token of ["--chart-ink", "--chart-muted"] as const) {
      expect(contrast(CHART_TOKENS[theme][token], PAPER[theme])).toBeGreaterThanOrEqual(4.5);
      expect(contrast(CHART_TOKENS[theme][token], CHART_TOKENS[theme]["--chart-shade"])).toBeGreaterThanOrEqual(4.5);
    }
  });

  it.each([COLOURS.first, COLOURS.second, COLOURS.third])("of series fall back to a colour that keeps 3:1 on both papers: %s", (colour) => {
    const fallback = /#[0-9a-f]{6}/.exec(colour)?.[0] ?? "";
    for (const theme of themes) expect(contrast(fallback, PAPER[theme])).toBeGreaterThanOrEqual(3);
  });

  it("are all defined for both themes in the style", () => {
    for (const theme of themes) {
      for (const [token, colour] of Object.entries(CHART_TOKENS[theme])) expect(CHART_CSS).toContain(`${token}:${colour}`);
    }
    expect(Object.keys(CHART_TOKENS.dark)).toEqual(Object.keys(CHART_TOKENS.light));
    for (const colour of Object.values(COLOURS)) {
      expect(Object.keys(CHART_TOKENS.light)).toContain(/--chart-\w+/.exec(colour)?.[0]);
    }
  });
});
