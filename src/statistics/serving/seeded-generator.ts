/** Numbers that look random and are the same again for the same seed. Not for secrets. */
export interface SeededGenerator {
  /** From 0 up to, not including, 1. */
  readonly next: () => number;
  /** A whole number from 0 to `count` − 1, each equally likely. */
  readonly below: (count: number) => number;
  /** A copy in random order, every order equally likely. */
  readonly shuffle: <Item>(items: readonly Item[]) => Item[];
}

const word = 2 ** 32;

/**
 * Source: generator sfc32 (Doty-Humphrey, PractRand), seeded with FNV-1a (Fowler, Noll & Vo);
 * shuffle after Fisher & Yates (Knuth, The Art of Computer Programming 2, 3.4.2 P). From memory.
 *
 * @param seed any text; other text gives other numbers
 */
export function seededGenerator(seed: string): SeededGenerator {
  const nextWord = wordsFrom(seed);
  const below = (count: number): number => {
    if (!(Number.isInteger(count) && count >= 1 && count <= word)) {
      throw new RangeError(`seededGenerator: below requires a whole number from 1, got ${count}`);
    }
    // Words past the last full multiple would favour small numbers: draw again.
    const most = word - (word % count);
    let drawn = nextWord();
    while (drawn >= most) drawn = nextWord();
    return drawn % count;
  };
  const shuffle = <Item>(items: readonly Item[]): Item[] => {
    const left = [...items];
    return items.flatMap(() => left.splice(below(left.length), 1));
  };
  return { next: () => nextWord() / word, below, shuffle };
}

function wordsFrom(seed: string): () => number {
  let [a, b, c, counter] = [hash(`${seed}\u0000a`), hash(`${seed}\u0000b`), hash(`${seed}\u0000c`), 1];
  const nextWord = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  // The first words still show the seed.
  for (let i = 0; i < 16; i += 1) nextWord();
  return nextWord;
}

function hash(text: string): number {
  let value = 0x811c9dc5;
  for (const unit of new TextEncoder().encode(text)) value = Math.imul(value ^ unit, 0x01000193);
  return value;
}
