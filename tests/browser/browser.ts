import { existsSync } from "node:fs";
import { mkdir, mkdtemp, rename, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { type Browser, chromium } from "playwright-core";

/** Keep in step with the pinned @sparticuz/chromium: the folder is reused between runs. */
const UNPACKED = path.join(tmpdir(), `gylebook-browser-147.0.0-${process.getuid?.() ?? "user"}`);

/**
 * Unpacks the browser that npm installed, once per machine, and gives its path.
 * GYLEBOOK_BROWSER may name another Chromium instead.
 */
export async function unpackBrowser(): Promise<string> {
  const chosen = process.env["GYLEBOOK_BROWSER"];
  if (chosen !== undefined && chosen !== "") return chosen;
  const executable = path.join(UNPACKED, "chromium");
  if (!existsSync(executable)) await unpackInto(UNPACKED);
  return executable;
}

/** The package unpacks into the temporary folder it finds: give it an own one, then move that into place whole. */
async function unpackInto(folder: string): Promise<void> {
  const before = process.env["TMPDIR"];
  const partial = await mkdtemp(`${folder}.partial-`);
  process.env["TMPDIR"] = partial;
  // Without this the package leaves out the shared libraries that a bare machine lacks.
  process.env["AWS_EXECUTION_ENV"] = "AWS_Lambda_nodejs20.x";
  try {
    const { default: packed } = await import("@sparticuz/chromium");
    await packed.executablePath();
  } finally {
    if (before === undefined) delete process.env["TMPDIR"];
    else process.env["TMPDIR"] = before;
  }
  await mkdir(path.dirname(folder), { recursive: true });
  // Another run may have been quicker: theirs is as good.
  await rename(partial, folder).catch(() => rm(partial, { recursive: true, force: true }));
}

/** A headless browser. Close it when done. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = await unpackBrowser();
  const isOwn = executablePath.startsWith(UNPACKED);
  return chromium.launch({
    executablePath,
    headless: true,
    args: ["--no-sandbox", "--font-render-hinting=none", "--disable-dev-shm-usage"],
    ...(isOwn ? { env: { ...process.env, LD_LIBRARY_PATH: path.join(UNPACKED, "al2023", "lib"), FONTCONFIG_PATH: path.join(UNPACKED, "fonts") } } : {}),
  });
}
