/** Anything the kernel made and that must be given back by hand. */
export interface Owned {
  delete(): void
}

/**
 * Runs `work` with a bag for kernel objects and gives them all back afterwards, whatever happens: the kernel's heap
 * is not cleaned by garbage collection. Nothing from the bag may leave `work`.
 */
export function scoped<T>(work: (own: <O extends Owned>(o: O) => O) => T): T {
  const bag: Owned[] = []
  const own = <O extends Owned>(o: O): O => {
    bag.push(o)
    return o
  }
  try {
    return work(own)
  } finally {
    for (const o of bag.reverse()) o.delete()
  }
}
