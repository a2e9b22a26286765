// The yardstick: Eleventy writing the files of a built site into another folder, and nothing else.
// Prints the milliseconds from the start of the process, without those it took to get the texts.
import { mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import Eleventy from "@11ty/eleventy";

const [site, out] = process.argv.slice(2);
const before = performance.now();
const texts = new Map();
for (const entry of readdirSync(site, { recursive: true, withFileTypes: true })) {
  const file = path.join(entry.parentPath, entry.name);
  if (entry.isFile() && /\.(html|json|csv|xml|ics|txt)$/.test(entry.name)) texts.set(path.relative(site, file), readFileSync(file, "utf8"));
}
const reading = performance.now() - before;

const input = mkdtempSync(path.join(tmpdir(), "gylebook-bench-"));
const eleventy = new Eleventy(input, out, {
  configPath: false, quietMode: true, loader: "esm",
  config(config) {
    config.setTemplateFormats(["11ty.js"]);
    config.addTemplate("site.11ty.js", class {
      data() {
        return { paths: [...texts.keys()], pagination: { data: "paths", size: 1, alias: "path" }, permalink: (data) => data.path, eleventyExcludeFromCollections: true };
      }

      render(data) {
        return texts.get(data.path);
      }
    });
  },
});
await eleventy.init();
eleventy.disableLogger();
await eleventy.write();
console.log(JSON.stringify({ ms: performance.now() - reading, files: texts.size }));
rmSync(input, { recursive: true });
