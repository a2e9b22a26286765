import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { EleventyConfig } from "@11ty/eleventy";

/** What Eleventy writes: pages and other text that are rendered one by one, and files that are bytes already. */
export interface SiteOutput {
  readonly pages: readonly OutputPage[];
  readonly assets: readonly OutputAsset[];
}

export interface OutputPage {
  /** Relative to the site's root, forward slashes, with an extension. */
  readonly path: string;
  readonly render: () => string | Promise<string>;
}

export interface OutputAsset {
  /** Relative to the site's root, forward slashes. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/**
 * Makes Eleventy write a site: one template that exists in memory only, paginated over the pages,
 * each at its own path. Eleventy reads no file of the log, so nothing in it can be taken for a template.
 */
export function addSite(config: EleventyConfig, { pages, assets }: SiteOutput): void {
  config.setTemplateFormats(["11ty.js"]);
  config.addTemplate("site.11ty.js", pageTemplate(pages));
  config.on("eleventy.after", ({ directories }) => writeAssets(directories.output, assets));
}

/**
 * The template's data hold paths only: Eleventy merges and copies what it is given for every page,
 * so what a page is made from stays out of its sight.
 */
function pageTemplate(pages: readonly OutputPage[]): unknown {
  const byPath = new Map(pages.map((page) => [page.path, page]));
  if (byPath.size < pages.length) throw new RangeError("two pages of the site have the same path");
  return class {
    data(): object {
      return {
        paths: [...byPath.keys()],
        pagination: { data: "paths", size: 1, alias: "path" },
        permalink: ({ path: place }: { path: string }) => place,
        eleventyExcludeFromCollections: true,
      };
    }

    async render({ path: place }: { path: string }): Promise<string> {
      const page = byPath.get(place);
      if (page === undefined) throw new RangeError(`no page is called "${place}"`);
      return page.render();
    }
  };
}

async function writeAssets(folder: string, assets: readonly OutputAsset[]): Promise<void> {
  for (const { path: place, bytes } of assets) {
    const target = path.join(folder, place);
    await mkdir(path.dirname(target), { recursive: true });
    await writeFile(target, bytes);
  }
}

/**
 * Eleventy runs the .eleventy.js of whatever folder the command is called in, unless another file is named,
 * and only such a file can keep it from reading that folder's package.json.
 */
async function writeOwnConfig(folder: string): Promise<string> {
  const file = path.join(folder, "eleventy.config.mjs");
  await writeFile(file, "export const config = { keys: { package: false } };\n");
  return fromWorkingFolder(file);
}

/** What a page threw, without what Eleventy wrapped around it. */
function originalError(error: unknown): unknown {
  if (!(error instanceof Error) || !("originalError" in error) || error.originalError === undefined) return error;
  return originalError(error.originalError);
}

/** Eleventy takes absolute paths for relative ones when the working folder is the root. */
const fromWorkingFolder = (place: string): string => path.relative(process.cwd(), place) || ".";

/**
 * Writes a site with Eleventy into `folder`, over what is there; files of other paths stay.
 *
 * @param folder absolute path
 * @throws what a page's render throws
 */
export async function writeSite(output: SiteOutput, folder: string): Promise<void> {
  if (output.pages.length === 0) return writeAssets(folder, output.assets);
  const { default: Eleventy } = await import("@11ty/eleventy");
  // Eleventy wants a folder to look for templates in: an empty one, never the log.
  const input = await mkdtemp(path.join(tmpdir(), "gylebook-"));
  try {
    const eleventy = new Eleventy(fromWorkingFolder(input), fromWorkingFolder(folder), {
      configPath: await writeOwnConfig(input),
      // Else pages come out empty where the nearest package.json isn't of type "module".
      loader: "esm",
      quietMode: true,
      config: (config) => {
        config.setUseGitIgnore(false);
        // It prints what took long, even when told to be quiet.
        config.benchmarkManager.get("Configuration").setIsVerbose(false);
        addSite(config, output);
      },
    });
    await eleventy.init();
    eleventy.disableLogger();
    await eleventy.write();
  } catch (error) {
    throw originalError(error);
  } finally {
    await rm(input, { recursive: true, force: true });
  }
}
