import type { Config } from "vega-lite";

/** The house face; the site ships it, Georgia stands in. */
export const CHART_FONT = "'Source Serif 4',Georgia,serif";

/** Type size of every label, px. The narrow drawing at 288 px still shows it at 11.7 px. */
export const TYPE_PX = 13;

/**
 * The inks, by theme. Series inks keep at least 4.5:1 on their own paper.
 * `shade` and `rule` are decoration: no reading depends on seeing them.
 */
export const CHART_TOKENS = {
  light: {
    "--chart-ink": "#221e19", "--chart-muted": "#625a4f", "--chart-rule": "#d8cfbf", "--chart-shade": "#ece5d6",
    "--chart-1": "#a03d1c", "--chart-2": "#28527a", "--chart-3": "#5c651b",
  },
  dark: {
    "--chart-ink": "#ece5d8", "--chart-muted": "#b3a999", "--chart-rule": "#413b33", "--chart-shade": "#28241e",
    "--chart-1": "#e58d66", "--chart-2": "#8ab5de", "--chart-3": "#b4bb66",
  },
} as const;

/**
 * Colours as the drawings name them. Fallbacks serve a page without the tokens: the page's own
 * text colour, and mid-tones that keep 3:1 on light and on dark paper alike.
 */
export const COLOURS = {
  ink: "var(--chart-ink,currentColor)",
  muted: "var(--chart-muted,currentColor)",
  rule: "var(--chart-rule,#8886)",
  shade: "var(--chart-shade,#8882)",
  first: "var(--chart-1,#bf5a36)",
  second: "var(--chart-2,#4d7fae)",
  third: "var(--chart-3,#7d8636)",
} as const;

/** What every chart shares: ink for text, hairlines for axes, nothing for decoration. */
export const CHART_CONFIG: Config = {
  aria: false,
  background: "transparent",
  font: CHART_FONT,
  locale: { number: { decimal: ".", thousands: ",", grouping: [3], currency: ["", ""] } },
  view: { stroke: null },
  axis: {
    domainColor: COLOURS.muted, domainWidth: 0.8, gridColor: COLOURS.rule, gridWidth: 0.7, labelColor: COLOURS.ink, labelFontSize: TYPE_PX,
    labelFlush: false, labelOverlap: false, labelPadding: 5, labelLimit: 0, tickColor: COLOURS.muted, tickSize: 4, tickWidth: 0.8,
    titleColor: COLOURS.ink, titleFontSize: TYPE_PX, titleFontWeight: "normal", titleLimit: 0,
  },
  // Data are complete; only a line may hold a break, where there is no log.
  mark: { invalid: "show" },
  line: { invalid: "break-paths-show-domains" },
  text: { fontSize: TYPE_PX, fill: COLOURS.ink, baseline: "alphabetic", limit: 0 },
};
