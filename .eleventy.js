// Builds the log at this folder's root with plain `npx eleventy`, into _site/, the same as `gylebook build .`.
// The program itself is compiled into dist/ by `npm ci`.
import { eleventyConfig } from "./dist/cli/index.js";

export default eleventyConfig(import.meta.dirname);

// Nothing in the log is a template. Eleventy looks for templates in a folder that holds none.
export const config = { dir: { input: "src/site", output: "_site" } };
