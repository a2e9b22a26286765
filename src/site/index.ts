export { addSite, writeSite, type OutputAsset, type OutputPage, type SiteOutput } from "./eleventy.js";
export { pageCharts, type PageCharts } from "./page-charts.js";
export { siteAssets } from "./site-assets.js";
export { siteFiles } from "./site-files.js";
export type {
  FermentationLogView, MethodView, PhotoView, ProblemView, RecordFieldView, SiteAsset, SiteFile, SiteInputs,
} from "./site-inputs.js";
