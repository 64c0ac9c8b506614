import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { emptyForm, exampleForm, type QuickForm } from '../../../src/app/quick/quick-form.ts'

/** A form as it stands while somebody is still typing. */
const halfway: QuickForm = { ...exampleForm, bore: ' 33 1/2', speaker: { choice: 'own', diameter: '', length: '5,4' } }

/** Of the browser, of the tab. */
let lasting = new Map<string, string>()
let tab = new Map<string, string>()
const storageOf = (kept: Map<string, string>) => ({
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, value: string) => kept.set(key, value),
})
/** What is kept in the tab is gone, as after closing the browser, or in another tab. */
function anotherTab() {
  tab = new Map()
  vi.stubGlobal('sessionStorage', storageOf(tab))
}

/** The page as it is after it was loaded: by an address or a link, by a reload, or by going back. */
async function loaded(type: 'navigate' | 'reload' | 'back_forward', hash = '') {
  vi.resetModules()
  vi.stubGlobal('location', { hash })
  vi.spyOn(performance, 'getEntriesByType').mockReturnValue([{ type }] as never)
  return import('../../../src/app/quick/kept-form.ts')
}

beforeEach(() => {
  lasting = new Map()
  vi.stubGlobal('localStorage', storageOf(lasting))
  anotherTab()
})
afterEach(() => {
  vi.unstubAllGlobals()
  vi.restoreAllMocks()
})

describe('the numbers of the quick check', () => {
  it.each(['reload', 'back_forward', 'navigate'] as const)('are there after a %s, as typed', async (type) => {
    ;(await loaded('navigate')).keepForm({ form: halfway, invented: false })
    expect((await loaded(type)).openingForm()).toEqual({ form: halfway, invented: false })
  })

  it('are there after a reload where they were typed over the invented ones', async () => {
    ;(await loaded('navigate', '#example')).keepForm({ form: halfway, invented: true })
    expect((await loaded('reload', '#example')).openingForm()).toEqual({ form: halfway, invented: true })
  })

  it('give way to the invented ones where those are asked for anew, or nothing was left', async () => {
    const page = await loaded('navigate', '#example')
    page.keepForm({ form: halfway, invented: false })
    expect(page.openingForm().form).toEqual(halfway)
    expect((await loaded('navigate', '#example')).openingForm()).toEqual({ form: exampleForm, invented: true })
    page.keepForm({ form: emptyForm, invented: false })
    expect((await loaded('reload', '#example')).openingForm().form).toEqual(exampleForm)
    expect((await loaded('reload')).openingForm()).toEqual({ form: emptyForm, invented: false })
  })

  it.each(['', '{', 'null', '{"form":{"bore":33}}', JSON.stringify({ form: { ...emptyForm, cell: null } })])(
    'are none where what is kept is no form of this page: %s',
    async (text) => {
      lasting.set('sledwright-quick', text)
      tab.set('sledwright-quick', text)
      expect((await loaded('reload')).openingForm().form).toEqual(emptyForm)
    },
  )

  it('are gone where the page could not be shown with them', async () => {
    const page = await loaded('navigate')
    page.keepForm({ form: halfway, invented: false })
    page.forgetForm()
    expect((await loaded('reload')).openingForm().form).toEqual(emptyForm)
  })

  it('are there when the browser is opened again', async () => {
    expect((await loaded('navigate')).keepForm({ form: halfway, invented: false })).toBe(true)
    anotherTab()
    expect((await loaded('navigate')).openingForm()).toEqual({ form: halfway, invented: false })
  })

  it('are those of the own tab first, and of two tabs the last written where a third begins', async () => {
    ;(await loaded('navigate')).keepForm({ form: halfway, invented: false })
    const first = tab
    anotherTab()
    ;(await loaded('navigate')).keepForm({ form: exampleForm, invented: true })
    vi.stubGlobal('sessionStorage', storageOf(first))
    expect((await loaded('reload')).openingForm().form).toEqual(halfway)
    anotherTab()
    expect((await loaded('navigate')).openingForm()).toEqual({ form: exampleForm, invented: true })
  })

  it('are not taken away by a look at the invented ones', async () => {
    ;(await loaded('navigate')).keepForm({ form: halfway, invented: false })
    anotherTab()
    expect((await loaded('navigate', '#example')).openingForm().form).toEqual(exampleForm)
    expect((await loaded('reload', '#example')).openingForm().form).toEqual(exampleForm)
    expect((await loaded('navigate')).openingForm().form).toEqual(halfway)
  })

  it('last as long as the page where the browser keeps nothing, and it is said', async () => {
    const refused = { get: () => expect.fail('no storage here') }
    for (const name of ['localStorage', 'sessionStorage']) {
      vi.stubGlobal(name, undefined)
      Object.defineProperty(globalThis, name, { ...refused, configurable: true })
    }
    const page = await loaded('navigate')
    expect(page.keepForm({ form: halfway, invented: false })).toBe(false)
    expect(page.openingForm().form).toEqual(halfway)
    expect((await loaded('reload')).openingForm().form).toEqual(emptyForm)
  })
})
