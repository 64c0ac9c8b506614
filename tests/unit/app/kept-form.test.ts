import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { emptyForm, exampleForm, type QuickForm } from '../../../src/app/quick/quick-form.ts'

/** A form as it stands while somebody is still typing. */
const halfway: QuickForm = { ...exampleForm, bore: ' 33 1/2', speaker: { choice: 'own', diameter: '', length: '5,4' } }

let storage = new Map<string, string>()

/** The page as it is after it was loaded: by an address or a link, by a reload, or by going back. */
async function loaded(type: 'navigate' | 'reload' | 'back_forward', hash = '') {
  vi.resetModules()
  vi.stubGlobal('location', { hash })
  vi.spyOn(performance, 'getEntriesByType').mockReturnValue([{ type }] as never)
  return import('../../../src/app/quick/kept-form.ts')
}

beforeEach(() => {
  storage = new Map()
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => storage.get(key) ?? null,
    setItem: (key: string, value: string) => storage.set(key, value),
  })
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
      storage.set('sledwright-quick', text)
      expect((await loaded('reload')).openingForm().form).toEqual(emptyForm)
    },
  )

  it('are gone where the page could not be shown with them', async () => {
    const page = await loaded('navigate')
    page.keepForm({ form: halfway, invented: false })
    page.forgetForm()
    expect((await loaded('reload')).openingForm().form).toEqual(emptyForm)
  })

  it('last as long as the page where the browser keeps nothing', async () => {
    vi.stubGlobal('sessionStorage', undefined)
    const page = await loaded('navigate')
    page.keepForm({ form: halfway, invented: false })
    expect(page.openingForm().form).toEqual(halfway)
  })
})
