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
