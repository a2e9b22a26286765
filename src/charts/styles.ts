import { CHART_TOKENS } from "./theme.js";

const declarations = (tokens: Readonly<Record<string, string>>): string =>
  Object.entries(tokens).map(([token, colour]) => `${token}:${colour}`).join(";");

/**
 * What a page needs for its charts: the inks of each theme, and which of a chart's two drawings shows.
 * The figure is the container that decides; on paper the wide drawing in the inks of light paper is used.
 */
export const CHART_CSS = `:root{${declarations(CHART_TOKENS.light)}}
@media screen and (prefers-color-scheme:dark){:root{${declarations(CHART_TOKENS.dark)}}}
.chart-figure{container-type:inline-size}
.chart{display:block;width:100%;height:auto;font-variant-numeric:tabular-nums lining-nums}
.chart-wide{max-width:680px}
.chart-narrow{max-width:400px;margin-inline:auto}
@media screen{.chart-narrow{display:none}
@container (max-width:35.99rem){.chart-wide{display:none}.chart-narrow{display:block}}}
@media print{.chart-narrow{display:none}.chart{break-inside:avoid}}
`;
