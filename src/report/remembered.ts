/** Makes something from an object once, and gives the same again while that object lives. */
export function remembered<Key extends object, Made>(make: (key: Key) => Made): (key: Key) => Made {
  const kept = new WeakMap<Key, { readonly made: Made }>();
  return (key) => {
    const held = kept.get(key);
    if (held !== undefined) return held.made;
    const made = make(key);
    kept.set(key, { made });
    return made;
  };
}
