/**
 * Root of a continuous function between two points where its signs differ, by Ridders' method:
 * the bracket at least halves with every step, near the root it converges quadratically.
 *
 * Source: Ridders, IEEE Transactions on Circuits and Systems 26 (1979). From memory.
 *
 * @param tolerance stops when the bracket, or the last step, is no wider than this
 * @throws RangeError when the signs don't differ or `fn` gives no number
 */
export function findRoot(fn: (x: number) => number, low: number, high: number, tolerance = 1e-12): number {
  let [a, b] = [low, high];
  let [fa, fb] = [fn(a), fn(b)];
  if (!(fa * fb <= 0)) throw new RangeError(`findRoot requires opposite signs at ${low} and ${high}, got ${fa} and ${fb}`);
  let root = fa === 0 ? a : b;
  for (let step = 0; step < 200 && fa !== 0 && fb !== 0 && Math.abs(b - a) > tolerance; step += 1) {
    const middle = (a + b) / 2;
    const fm = fn(middle);
    const last = root;
    root = middle + ((middle - a) * Math.sign(fa - fb) * fm) / Math.sqrt(fm * fm - fa * fb);
    const fr = fn(root);
    if (fr === 0 || (step > 0 && Math.abs(root - last) <= tolerance)) return root;
    // Keep the narrowest bracket among the four points.
    if (fm * fr < 0) [a, fa, b, fb] = [middle, fm, root, fr];
    else if (fa * fr < 0) [b, fb] = [root, fr];
    else [a, fa] = [root, fr];
  }
  return root;
}
