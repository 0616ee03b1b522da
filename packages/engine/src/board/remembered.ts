/** The same function, which works each thing out once for as long as its argument is around. */
export const remembered = <Key extends object, Value>(make: (key: Key) => Value): ((key: Key) => Value) => {
  const kept = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    const known = kept.get(key);
    if (known) return known.value;
    const value = make(key);
    kept.set(key, { value });
    return value;
  };
};

/** As `remembered`, of several things: known again where all of them are the same. */
export const rememberedTogether = <Keys extends readonly object[], Value>(
  make: (...keys: Keys) => Value,
): ((...keys: Keys) => Value) => {
  interface Kept {
    readonly next: WeakMap<object, Kept>;
    value?: { readonly of: Value };
  }
  const fresh = (): Kept => ({ next: new WeakMap() });
  const root = fresh();
  return (...keys) => {
    let kept = root;
    for (const key of keys) {
      const next = kept.next.get(key) ?? fresh();
      kept.next.set(key, next);
      kept = next;
    }
    kept.value ??= { of: make(...keys) };
    return kept.value.of;
  };
};
