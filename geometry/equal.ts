/**
 * Whether two values are equal in all they hold, numbers bit by bit: plain objects, arrays and maps are looked into,
 * anything else (a function, an object of a class) is equal to itself only, so that what cannot be compared counts as
 * changed.
 */
export function equal(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return Object.is(a, b)
  if (a === b) return true
  if (Array.isArray(a)) return Array.isArray(b) && equalLists(a, b)
  if (a instanceof Map) return b instanceof Map && equalLists([...a], [...b])
  const proto = Object.getPrototypeOf(a)
  if (proto !== Object.getPrototypeOf(b) || (proto !== Object.prototype && proto !== null)) return false
  const p = a as Record<string, unknown>
  const q = b as Record<string, unknown>
  let left = 0
  for (const key in p) {
    const x = p[key]
    const y = q[key]
    // Most are the same word or number; a zero has its sign.
    if (x !== y || x === 0 || x === undefined) if (!equal(x, y) || (y === undefined && !(key in q))) return false
    left++
  }
  for (const _ in q) left--
  return left === 0
}

function equalLists(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i++) if (!equal(a[i], b[i])) return false
  return true
}
