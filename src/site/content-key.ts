import { createHash } from "node:crypto";

/** A short hash of plain JSON: equal content, equal key, on any machine. */
export function contentKey(...content: readonly unknown[]): string {
  return createHash("sha256").update(JSON.stringify(content)).digest("hex").slice(0, 20);
}

/** Stands for something large in the content of keys: its own key is taken when the first of them is, and once. */
export interface LargePart {
  readonly toJSON: () => string;
}

export function largePart(content: object): LargePart {
  let key: string | undefined;
  return { toJSON: () => key ??= contentKey(content) };
}
