import { rm } from "node:fs/promises";
import path from "node:path";
import type { Problem } from "../problems/index.js";
import { writeSite } from "../site/index.js";
import { type BuildOptions, type PlannedOutput, planSite } from "./build.js";
import type { Effects } from "./effects.js";
import { writeMarker } from "./output-folder.js";
import { startProgress } from "./progress.js";

/** What an update of the preview came to. */
export interface Update {
  /** Files written or removed; 0 when nothing on the site is new. */
  readonly changed: number;
  readonly problems: readonly Problem[];
  readonly leftOut: readonly string[];
}

/**
 * A site in a folder of its own that follows its log: an update writes only the files whose key is new.
 * Errors in the log change nothing, so the last good site stays.
 */
export class Preview {
  /** Path → key of what lies in the folder. */
  #keys: ReadonlyMap<string, string> = new Map();
  #problems: readonly Problem[] = [];

  /** @param folder absolute path; everything in it is the preview's */
  constructor(readonly folder: string, private readonly effects: Effects) {}

  /** Of the last update. */
  get problems(): readonly Problem[] {
    return this.#problems;
  }

  /** Whether there is a site to show. */
  get isBuilt(): boolean {
    return this.#keys.size > 0;
  }

  /**
   * Brings the folder up to the log.
   *
   * @param shown called when the pages of the batches that changed are there, before the rest is written
   */
  async update(options: BuildOptions, shown: () => void): Promise<Update> {
    const progress = startProgress(this.effects);
    try {
      const { problems, leftOut, output } = await planSite(options, this.effects, progress);
      progress.say("Writing what changed");
      this.#problems = output === undefined ? problems : [];
      const changed = output === undefined ? 0 : await this.#write(output, shown);
      return { changed, problems, leftOut };
    } finally {
      progress.done();
    }
  }

  async #write({ pages, assets }: PlannedOutput, shown: () => void): Promise<number> {
    // An asset's path names its content, or it comes with the program: both never change under one name.
    const keys = new Map([...pages.map(({ path: place, key }) => [place, key] as const), ...assets.map(({ path: place }) => [place, ""] as const)]);
    const isNew = ({ path: place }: { readonly path: string }): boolean => this.#keys.get(place) !== keys.get(place);
    const fresh = { pages: pages.filter(isNew), assets: assets.filter(isNew) };
    const gone = [...this.#keys.keys()].filter((place) => !keys.has(place));
    const own = fresh.pages.filter(({ path: place }) => isBatchPage(place));
    const first = this.isBuilt && own.length <= MOST_FIRST ? own : [];
    if (first.length > 0) {
      await writeSite({ pages: first, assets: fresh.assets }, this.folder);
      shown();
    }
    await writeSite({ pages: fresh.pages.filter((page) => !first.includes(page)), assets: fresh.assets }, this.folder);
    await writeMarker(this.folder);
    await Promise.all(gone.map((place) => rm(path.join(this.folder, place), { force: true })));
    this.#keys = keys;
    return fresh.pages.length + fresh.assets.length + gone.length;
  }
}

/** More changed pages than a save of one record brings are written in one go. */
const MOST_FIRST = 8;

const isBatchPage = (place: string): boolean => /^batches\/.*\.html$/.test(place) && place !== "batches/index.html";
