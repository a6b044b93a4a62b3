/** What follows from something that never changes, worked out once, however often it is asked for. */
export function remembered<K extends object, T>(compute: (from: K) => T): (from: K) => T {
  const known = new WeakMap<K, { readonly value: T }>();
  return (from) => {
    const found = known.get(from) ?? { value: compute(from) };
    known.set(from, found);
    return found.value;
  };
}

/** For each key all that is listed with it, in order. */
export function grouped<K, V>(pairs: Iterable<readonly [K, V]>): ReadonlyMap<K, readonly V[]> {
  const groups = new Map<K, V[]>();
  for (const [key, value] of pairs) {
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [value]);
    else group.push(value);
  }
  return groups;
}
