export { renderChart, renderCharts, type RenderOptions } from "./render-charts.js";
