/**
 * A pure function that keeps its last few answers by the value of what it was asked. Most changes at the bench leave
 * most of a sled as it was; what is dear to compute need not be computed again.
 */
export function remember<A, V>(most: number, keyOf: (a: A) => string, make: (a: A) => V): (a: A) => V {
  const kept = new Map<string, V>()
  return (a) => {
    const key = keyOf(a)
    const known = kept.get(key)
    if (known !== undefined) {
      // Asked for again, it is the last to go.
      kept.delete(key)
      kept.set(key, known)
      return known
    }
    const value = make(a)
    if (kept.size >= most) kept.delete(kept.keys().next().value as string)
    kept.set(key, value)
    return value
  }
}

/** A pure function of an object and a key that keeps its answers with the object, as long as that lives. */
export function rememberOn<O extends object, V, K = void>(make: (of: O, key: K) => V): (of: O, key: K) => V {
  const kept = new WeakMap<O, Map<K, V>>()
  return (of, key) => {
    let own = kept.get(of)
    if (!own) {
      own = new Map()
      kept.set(of, own)
    }
    const known = own.get(key)
    if (known !== undefined || own.has(key)) return known as V
    const value = make(of, key)
    own.set(key, value)
    return value
  }
}
