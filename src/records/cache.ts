/** What was made of a file's content, kept as long as everything it was made from is the same. */
export type RecordCache = Map<string, { readonly inputs: readonly unknown[]; readonly result: unknown }>;

/**
 * The result of `make`, or the same object as last time where every input is the same.
 *
 * @param inputs compared one by one, texts by their letters, bytes by their values, everything else by identity
 */
export function remembered<Result>(cache: RecordCache, key: string, inputs: readonly unknown[], make: () => Result): Result {
  const before = cache.get(key);
  if (before !== undefined && before.inputs.length === inputs.length && before.inputs.every((input, index) => isSame(input, inputs[index]))) {
    return before.result as Result;
  }
  const result = make();
  cache.set(key, { inputs, result });
  return result;
}

function isSame(one: unknown, other: unknown): boolean {
  if (one instanceof Uint8Array && other instanceof Uint8Array) return Buffer.compare(one, other) === 0;
  return one === other;
}
