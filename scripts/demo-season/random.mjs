/**
 * Random numbers that come out the same on every machine and every run: a 32-bit generator
 * (the "mulberry" mixing step) started from the hash of a name, so that each file has a stream
 * of its own and adding a batch leaves the others as they were.
 */

/** @typedef {{uniform: () => number, normal: (sd?: number) => number, pick: <T>(list: T[]) => T, shuffle: <T>(list: T[]) => T[]}} Random */

/** FNV-1a, 32 bit. @param {string} name @returns {number} */
function hashName(name) {
  let hash = 0x811c9dc5;
  for (let index = 0; index < name.length; index += 1) {
    hash = Math.imul(hash ^ name.charCodeAt(index), 0x01000193);
  }
  return hash >>> 0;
}

/** @param {number} seed @returns {() => number} numbers in [0, 1) */
function createUniform(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * A stream of random numbers that belongs to one name.
 * Normal deviates are the sum of twelve uniforms less six: exact arithmetic, no logarithm or cosine
 * whose last digit could differ between machines, and never beyond six standard deviations.
 * @param {string} name @returns {Random}
 */
export function createRandom(name) {
  const uniform = createUniform(hashName(name));
  const normal = (sd = 1) => {
    let sum = -6;
    for (let draw = 0; draw < 12; draw += 1) sum += uniform();
    return sum * sd;
  };
  const pick = (list) => list[Math.floor(uniform() * list.length)];
  const shuffle = (list) => {
    const shuffled = [...list];
    for (let last = shuffled.length - 1; last > 0; last -= 1) {
      const other = Math.floor(uniform() * (last + 1));
      [shuffled[last], shuffled[other]] = [shuffled[other], shuffled[last]];
    }
    return shuffled;
  };
  return { uniform, normal, pick, shuffle };
}
