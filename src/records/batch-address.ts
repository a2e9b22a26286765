/** A batch number as page addresses use it: `TP-03` → `tp-03`; empty where it has no letter or digit. */
export function slugOf(batch: string): string {
  return batch.normalize("NFKD").replaceAll(/\p{M}+/gu, "").toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-+|-+$/gu, "").normalize("NFC");
}

/** The pages of a batch; no other batch may have one of them. */
export function pagesOf(slug: string): string[] {
  return [slug, `${slug}-sheet`, `${slug}-entry`];
}

/** Page names that batches/ needs for itself. */
export const TAKEN_PAGES: ReadonlyMap<string, string> = new Map([["index", "the list of batches"]]);
