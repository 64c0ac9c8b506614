/**
 * A pure function that keeps its last few answers by the value of what it was asked. Most changes at the bench leave
 * most of a sled as it was; what is dear to compute need not be computed again.
 */
export function remember<A, V>(most: number, keyOf: (a: A) => string, make: (a: A) => V): (a: A) => V {
  // Two generations: what was not asked for while as many others were goes. Keeping the order of every question in one
  // map costs more than many an answer.
  let young = new Map<string, V>()
  let old = new Map<string, V>()
  return (a) => {
    const key = keyOf(a)
    const known = young.get(key)
    if (known !== undefined) return known
    const value = old.get(key) ?? make(a)
    if (young.size >= most) {
      old = young
      young = new Map()
    }
    young.set(key, value)
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
