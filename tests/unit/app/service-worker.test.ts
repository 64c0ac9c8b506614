import { afterEach, describe, expect, it, vi } from 'vitest'
import { keepPage } from '../../../src/app/sheet/service-worker.ts'

/** A stored copy of the page as the browser hands it out. */
class Copy extends EventTarget {
  state = 'installing'
  readonly told: unknown[] = []
  postMessage(message: unknown) {
    this.told.push(message)
  }
  becomes(state: string) {
    this.state = state
    this.dispatchEvent(new Event('statechange'))
  }
}

class Registration extends EventTarget {
  waiting: Copy | null = null
  installing: Copy | null = null
  comes(copy: Copy) {
    this.installing = copy
    this.dispatchEvent(new Event('updatefound'))
  }
}

async function kept(registration: Registration, controller: Copy | null) {
  const reload = vi.fn<() => void>()
  const container = Object.assign(new EventTarget(), { controller, register: async () => registration })
  vi.stubEnv('PROD', true)
  vi.stubGlobal('navigator', { serviceWorker: container })
  vi.stubGlobal('location', { reload })
  const offered = vi.fn<(load: () => void) => void>()
  keepPage(offered)
  await Promise.resolve()
  await Promise.resolve()
  return { offered, reload, taken: () => container.dispatchEvent(new Event('controllerchange')) }
}

afterEach(() => {
  vi.unstubAllGlobals()
  vi.unstubAllEnvs()
})

describe('a newer page', () => {
  it.each(['waits already', 'comes while the page is open'])('that %s is offered, and loaded on a yes', async (how) => {
    const registration = new Registration()
    const newer = new Copy()
    if (how === 'waits already') registration.waiting = newer
    const page = await kept(registration, new Copy())
    if (how !== 'waits already') {
      registration.comes(newer)
      expect(page.offered).not.toHaveBeenCalled()
      newer.becomes('installed')
    }
    expect(page.offered).toHaveBeenCalledOnce()
    expect(newer.told).toEqual([])
    page.offered.mock.calls[0]?.[0]()
    expect(newer.told).toEqual([{ type: 'SKIP_WAITING' }])
    expect(page.reload).not.toHaveBeenCalled()
    page.taken()
    expect(page.reload).toHaveBeenCalledOnce()
  })

  it('is none at the first visit: nothing is offered, nothing loaded anew', async () => {
    const registration = new Registration()
    const page = await kept(registration, null)
    const first = new Copy()
    registration.comes(first)
    first.becomes('installed')
    page.taken()
    expect(page.offered).not.toHaveBeenCalled()
    expect(page.reload).not.toHaveBeenCalled()
  })

  it('is not asked for while developing, nor where the browser has no such thing', () => {
    vi.stubGlobal('navigator', {})
    vi.stubEnv('PROD', true)
    expect(() => keepPage(() => undefined)).not.toThrow()
    vi.stubEnv('PROD', false)
    expect(() => keepPage(() => undefined)).not.toThrow()
  })
})
