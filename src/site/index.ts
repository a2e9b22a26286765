export { addSite, writeSite, type OutputAsset, type OutputPage, type SiteOutput } from "./eleventy.js";
export { pageCharts, type PageCharts } from "./page-charts.js";
export { siteAssets } from "./site-assets.js";
export { siteFiles } from "./site-files.js";
export type { ProblemView, RecordFieldView } from "./help-views.js";
export type { MethodView } from "./method-view.js";
export type { SiteAsset, SiteFile } from "./site-file.js";
export type { FermentationLogView, PhotoView, SiteInputs } from "./site-inputs.js";
export { FACES_FIRST } from "./page/layout.js";
