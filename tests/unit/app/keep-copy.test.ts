import { describe, expect, it } from 'vitest'
import { type Copies, keepCopy } from '../../../src/app/sheet/keep-copy.ts'

/* The browser's side of it, played: what is registered, what waits, and who answers. */

class Copy extends EventTarget {
  state: ServiceWorkerState = 'installing'
  readonly told: unknown[] = []

  postMessage(message: unknown): void {
    this.told.push(message)
  }
}

class Registered extends EventTarget {
  installing: Copy | null = null
  waiting: Copy | null = null

  /** A newer copy is found, and once it is whole it waits. */
  find(): Copy {
    const found = new Copy()
    this.installing = found
    this.dispatchEvent(new Event('updatefound'))
    return found
  }

  finish(found: Copy): void {
    this.installing = null
    this.waiting = found
    found.state = 'installed'
    found.dispatchEvent(new Event('statechange'))
  }
}

class Browser extends EventTarget implements Copies {
  controller: unknown = null
  asked: string | undefined
  readonly registered: Registered | undefined

  constructor(registered: Registered | undefined) {
    super()
    this.registered = registered
  }

  async register(url: string): Promise<Registered | undefined> {
    this.asked = url
    return this.registered
  }
}

async function visit(older: boolean, registered: Registered | undefined = new Registered()) {
  const browser = new Browser(registered)
  if (older) browser.controller = new Copy()
  const seen = { reloads: 0, loads: [] as (() => void)[] }
  await keepCopy(browser, { reload: () => seen.reloads++ }, (load) => seen.loads.push(load))
  return { browser, seen }
}

describe('the copy that is kept of the page', () => {
  it('is asked for at every visit, and says nothing at the first', async () => {
    const registered = new Registered()
    const { browser, seen } = await visit(false, registered)
    registered.finish(registered.find())
    expect(browser.asked).toBe('./sw.js')
    expect(seen).toEqual({ reloads: 0, loads: [] })
  })

  it('is offered when a newer one waits, and replaced only after a yes', async () => {
    const registered = new Registered()
    const { browser, seen } = await visit(true, registered)
    const newer = registered.find()
    expect(seen.loads).toHaveLength(0)
    registered.finish(newer)
    expect(seen.loads).toHaveLength(1)
    expect(newer.told).toEqual([])
    seen.loads[0]?.()
    expect(newer.told).toEqual([{ type: 'SKIP_WAITING' }])
    expect(seen.reloads).toBe(0)
    browser.dispatchEvent(new Event('controllerchange'))
    expect(seen.reloads).toBe(1)
  })

  it.each(['waits since an earlier visit', 'is on its way as the page comes'])('is offered when it %s', async (how) => {
    const registered = new Registered()
    const newer = registered.find()
    if (how.startsWith('waits')) registered.finish(newer)
    const { seen } = await visit(true, registered)
    if (how.startsWith('is on')) registered.finish(newer)
    expect(seen.loads).toHaveLength(1)
  })

  it('is loaded at once where another tab has said yes before', async () => {
    const registered = new Registered()
    const { seen } = await visit(true, registered)
    registered.finish(registered.find())
    registered.waiting = null
    seen.loads[0]?.()
    expect(seen.reloads).toBe(1)
  })

  it('is done without where the browser keeps none', async () => {
    const nothing = { reload: () => expect.unreachable() }
    await keepCopy(undefined, nothing, () => expect.unreachable())
    const blocked = new Browser(undefined)
    await keepCopy(blocked, nothing, () => expect.unreachable())
    blocked.register = () => Promise.reject(new Error('not allowed here'))
    await expect(keepCopy(blocked, nothing, () => expect.unreachable())).resolves.toBeUndefined()
  })
})
