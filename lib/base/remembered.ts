/**
 * A function of something that never changes, made once for each. What is remembered goes when its key goes.
 *
 * @param make gives the same for the same key; it must not give `undefined`.
 */
export function remembered<K extends object, V extends NonNullable<unknown>>(make: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    let value = known.get(key);
    if (value === undefined) {
      value = make(key);
      known.set(key, value);
    }
    return value;
  };
}

/** The same of two things that never change. */
export function rememberedPair<A extends object, B extends object, V extends NonNullable<unknown>>(
  make: (one: A, other: B) => V,
): (one: A, other: B) => V {
  const of = remembered((one: A) => remembered((other: B) => make(one, other)));
  return (one, other) => of(one)(other);
}

/** Worked out when first asked for. */
export function once<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
