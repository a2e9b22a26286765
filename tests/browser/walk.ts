import type { Browser, BrowserContextOptions, Page } from "playwright-core";

/** Two pages are open at a time: the browser draws each in a process of its own, and the test asks from a third. */
const OPEN_AT_ONCE = 2;

export interface Walk {
  readonly browser: Browser;
  readonly options?: BrowserContextOptions;
  readonly files: readonly string[];
  readonly addressOf: (file: string) => string;
}

/** Opens each file's page and keeps what `look` makes of it, in the order of the files. */
export async function walk<Seen>({ browser, options = {}, files, addressOf }: Walk, look: (page: Page, file: string) => Promise<Seen>, prepare: (page: Page) => void = () => undefined): Promise<ReadonlyMap<string, Seen>> {
  const context = await browser.newContext(options);
  const seen = new Map<string, Seen>();
  const waiting = [...files];
  const lookOn = async (): Promise<void> => {
    const page = await context.newPage();
    prepare(page);
    for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
      await page.goto(addressOf(file), { waitUntil: "load" });
      seen.set(file, await look(page, file));
    }
  };
  await Promise.all(Array.from({ length: OPEN_AT_ONCE }, lookOn));
  await context.close();
  return new Map(files.map((file) => [file, seen.get(file) as Seen]));
}
