export { eleventyConfig } from "./eleventy-config.js";
