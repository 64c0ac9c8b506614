import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type Keep, Keeper } from '../../../../src/app/keeping/keeper.ts'
import type { JobCard, KeptJob } from '../../../../src/app/keeping/kept-job.ts'
import { mayWrite } from '../../../../src/app/keeping/revision.ts'
import type { Tiding } from '../../../../src/app/keeping/tidings.ts'
import { createJobStore } from '../../../../src/app/work/job-store.ts'
import { aJob, note } from './a-job.ts'

/** The shelf of one browser, with what is said between its tabs. */
function aBrowser() {
  const kept = new Map<string, KeptJob>()
  const told: Tiding[] = []
  let refusal: Error | undefined
  const keep: Keep = {
    put: async (card, contents, seen) => {
      if (refusal) throw refusal
      const may = mayWrite(kept.get(card.id)?.card, card.stamp, seen)
      if (may === 'write') kept.set(card.id, structuredClone({ card, contents }))
      return may
    },
    take: async (id) => structuredClone(kept.get(id)),
    tell: (tiding) => void told.push(tiding),
  }
  return { kept, told, keep, refuse: (error: Error | undefined) => (refusal = error) }
}

function aTab(browser: ReturnType<typeof aBrowser>, card?: JobCard) {
  const contents = card && browser.kept.get(card.id)?.contents
  const job = createJobStore(contents?.project ?? aJob(), contents?.history)
  const places: string[] = []
  const keeper = new Keeper(job, card, browser.keep, (id) => void places.push(id))
  return { job, keeper, places, standing: () => keeper.standing.getState() }
}

const written = async () => {
  await vi.advanceTimersByTimeAsync(300)
}

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

describe('one tab', () => {
  it('keeps a demo only once it is changed, and then within 300 ms', async () => {
    const browser = aBrowser()
    const tab = aTab(browser)
    await vi.advanceTimersByTimeAsync(10_000)
    expect([browser.kept.size, tab.standing().kind]).toEqual([0, 'untouched'])
    tab.job.edit(note('a'))
    expect(tab.standing().kind).toBe('waiting')
    await written()
    expect(tab.standing().kind).toBe('kept')
    expect(tab.places).toEqual([...browser.kept.keys()])
  })

  it('writes while one types on, not only in the pauses', async () => {
    const browser = aBrowser()
    const tab = aTab(browser)
    for (let i = 0; i < 10; i++) {
      tab.job.edit(note(`${i}`), 'note')
      await vi.advanceTimersByTimeAsync(50)
    }
    const [kept] = browser.kept.values()
    expect(kept?.card.revision).toBeGreaterThanOrEqual(2)
    await written()
    expect([...browser.kept.values()][0]?.contents.project).toEqual(tab.job.get())
  })

  it('keeps what can be undone, so that a later tab undoes it to the very same job', async () => {
    const browser = aBrowser()
    const tab = aTab(browser)
    const before = tab.job.get()
    tab.job.edit(note('a'))
    tab.job.edit(note('b'))
    tab.job.undo()
    await written()
    const [kept] = browser.kept.values()
    const next = aTab(browser, kept?.card)
    next.job.redo()
    expect(next.job.get().hilts[0]?.note).toBe('b')
    next.job.undo()
    next.job.undo()
    expect(next.job.get()).toEqual(before)
  })

  it('says why nothing was written, tries again, and writes what was typed meanwhile', async () => {
    const browser = aBrowser()
    const tab = aTab(browser)
    browser.refuse(new DOMException('full', 'QuotaExceededError'))
    tab.job.edit(note('a'))
    await written()
    expect(tab.standing()).toMatchObject({ kind: 'failed', full: true })
    tab.job.edit(note('b'))
    expect(tab.standing().kind).toBe('failed')
    browser.refuse(undefined)
    await vi.advanceTimersByTimeAsync(6000)
    expect(tab.standing().kind).toBe('kept')
    expect([...browser.kept.values()][0]?.contents.project.hilts[0]?.note).toBe('b')
  })

  it('writes at once what is open when it ends, and leaves the address to whoever came next', async () => {
    const browser = aBrowser()
    const tab = aTab(browser)
    tab.job.edit(note('a'))
    tab.keeper.end()
    await vi.advanceTimersByTimeAsync(0)
    expect([...browser.kept.values()][0]?.contents.project.hilts[0]?.note).toBe('a')
    expect(tab.places).toEqual([])
  })
})

describe('two tabs on one job', () => {
  async function twoTabs() {
    const browser = aBrowser()
    const first = aTab(browser)
    await first.keeper.keepNow()
    const card = [...browser.kept.values()][0]?.card
    const second = aTab(browser, card)
    return { browser, first, second, id: card?.id ?? '' }
  }

  it('never writes over the other, even where no word of it came through', async () => {
    const { browser, first, second, id } = await twoTabs()
    first.job.edit(note('first'))
    await written()
    second.job.edit(note('second'))
    await written()
    expect(second.standing()).toEqual({ kind: 'elsewhere', what: 'changed' })
    expect(browser.kept.get(id)?.contents.project.hilts[0]?.note).toBe('first')
    second.job.edit(note('second, more'))
    await vi.advanceTimersByTimeAsync(20_000)
    expect(browser.kept.get(id)?.contents.project.hilts[0]?.note).toBe('first')
  })

  it('of two that write in the same moment one is told', async () => {
    const { first, second } = await twoTabs()
    first.job.edit(note('first'))
    second.job.edit(note('second'))
    await written()
    expect([first.standing().kind, second.standing().kind].sort()).toEqual(['elsewhere', 'kept'])
  })

  it('hears of it at once where it is told, and not of its own writing', async () => {
    const { browser, first, second } = await twoTabs()
    first.job.edit(note('first'))
    await written()
    const tiding = browser.told.at(-1)
    if (!tiding) throw new Error('nothing was told')
    first.keeper.hear(tiding)
    second.keeper.hear(tiding)
    second.keeper.hear({ id: 'another job', stamp: 'x' })
    expect([first.standing().kind, second.standing().kind]).toEqual(['kept', 'elsewhere'])
  })

  it('takes theirs with their history, and writes on from there', async () => {
    const { browser, first, second, id } = await twoTabs()
    first.job.edit(note('first'))
    await written()
    second.job.edit(note('second'))
    await written()
    await second.keeper.takeTheirs()
    expect(second.job.get().hilts[0]?.note).toBe('first')
    second.job.undo()
    expect(second.job.get().hilts[0]?.note).toBeUndefined()
    await written()
    expect(second.standing().kind).toBe('kept')
    expect(browser.kept.get(id)?.card.revision).toBe(3)
  })

  it('keeps mine as a copy beside theirs', async () => {
    const { browser, first, second, id } = await twoTabs()
    first.job.edit(note('first'))
    await written()
    second.job.edit(note('second'))
    await written()
    await second.keeper.keepAsCopy()
    const copy = browser.kept.get(second.places[0] ?? '')
    expect(copy?.card.name).toBe('Mole lantern (copy)')
    expect(copy?.contents.project.hilts[0]?.note).toBe('second')
    expect(browser.kept.get(id)?.contents.project.hilts[0]?.note).toBe('first')
    second.job.edit(note('second, more'))
    await written()
    expect([browser.kept.size, second.standing().kind]).toEqual([2, 'kept'])
  })

  it('does not bring back in silence what was deleted in the other tab', async () => {
    const { browser, second, id } = await twoTabs()
    browser.kept.delete(id)
    second.job.edit(note('second'))
    await written()
    expect(second.standing()).toEqual({ kind: 'elsewhere', what: 'deleted' })
    expect(browser.kept.size).toBe(0)
  })
})
