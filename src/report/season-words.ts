/** `orange peel` → `Orange peel` */
export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `Dry-hop dose` → `dry-hop dose`, to stand inside a sentence. */
export function uncapitalised(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

/** `a`, `a and b`, `a, b and c` */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}

/** `1 batch`, `11 batches` */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
