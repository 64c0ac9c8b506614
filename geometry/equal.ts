/**
 * Whether two values are equal in all they hold, numbers bit by bit: plain objects, arrays and maps are looked into,
 * anything else (a function, an object of a class) is equal to itself only, so that what cannot be compared counts as
 * changed.
 */
export function equal(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((x, i) => equal(x, b[i]))
  if (a instanceof Map) return b instanceof Map && equal([...a], [...b])
  const proto = Object.getPrototypeOf(a)
  if (proto !== Object.getPrototypeOf(b) || (proto !== Object.prototype && proto !== null)) return false
  const [p, q] = [a as Record<string, unknown>, b as Record<string, unknown>]
  let left = 0
  for (const key in p) {
    if (!(key in q && equal(p[key], q[key]))) return false
    left++
  }
  for (const _ in q) left--
  return left === 0
}
