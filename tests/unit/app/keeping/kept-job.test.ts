import { describe, expect, it } from 'vitest'
import { freshName, freshStamp, nameless, nameOf, nextCard, withName } from '../../../../src/app/keeping/kept-job.ts'
import { renamed } from '../../../../src/app/keeping/renamed.ts'
import { fileName, fileText } from '../../../../src/app/keeping/save-job.ts'
import { sizeText } from '../../../../src/app/keeping/saved-words.ts'
import { readProject } from '../../../../src/project/read.ts'
import { aJob } from './a-job.ts'

describe('the card of a job', () => {
  it('counts the writings, and says when, how large and by which writing', () => {
    const first = nextCard('a', aJob(), undefined, 's1', 1000)
    const second = nextCard('a', withName(aJob(), 'Möwe'), first, 's2', 2000)
    expect(first).toMatchObject({ id: 'a', name: 'Mole lantern', revision: 1, stamp: 's1', written: 1000 })
    expect(second).toMatchObject({ name: 'Möwe', revision: 2, stamp: 's2', written: 2000 })
    expect(second.size).toBe(Buffer.byteLength(JSON.stringify(withName(aJob(), 'Möwe'))))
  })

  it('is never without words where the job has no name', () => {
    expect(nameOf({ ...aJob(), job: [] })).toBe(nameless)
    expect(nameOf(withName(aJob(), '  '))).toBe(nameless)
    expect(nameOf(withName({ ...aJob(), job: [] }, 'Mole'))).toBe('Mole')
  })

  it('keeps whatever else the record of the job says', () => {
    const job = [{ id: 'j', name: 'a', client: 'Harbour office' }, { id: 'k' }]
    expect(withName({ ...aJob(), job }, 'b').job).toEqual([
      { id: 'j', name: 'b', client: 'Harbour office' },
      { id: 'k' },
    ])
  })
})

describe('names', () => {
  it('count on where one is taken', () => {
    expect(freshName('New job', [])).toBe('New job')
    expect(freshName('New job', ['New job'])).toBe('New job 2')
    expect(freshName('New job 2', ['New job', 'New job 2', 'New job 3'])).toBe('New job 4')
  })

  it('are never the same for two writings', () => {
    expect(new Set(Array.from({ length: 200 }, freshStamp)).size).toBe(200)
  })

  it('of files hold plain letters, digits and hyphens only', () => {
    expect(fileName(withName(aJob(), 'Möwe / lantern: №2'))).toBe('mo-we-lantern-no2.json')
    expect(fileName(withName(aJob(), '../..'))).toBe('job.json')
    expect(fileName(withName(aJob(), 'x'.repeat(120))).length).toBeLessThanOrEqual(65)
  })
})

it('the text of a file is read back as the same job, with fields nobody knows', () => {
  const job = { ...aJob(), workshop: { bench: 3 } }
  const read = readProject(fileText(job))
  expect(read).toEqual({ ok: true, value: { project: job, notices: ['workshop'] } })
})

it('sizes are said in words of three digits', () => {
  expect([980, 12_400, 1_250_000].map(sizeText)).toEqual(['980 B', '12 kB', '1.3 MB'])
})

describe('a job renamed by hand', () => {
  const named = (job: string, ...hilts: string[]) => ({
    ...withName(aJob(), job),
    hilts: hilts.map((name, i) => ({ id: `h${i}`, name })),
  })
  const hiltsOf = (project: ReturnType<typeof aJob>) => project.hilts.map((h) => h.name)

  it('takes its only hilt with it while both have one name', () => {
    const next = renamed(named('Mole', 'Mole'), 'Pier')
    expect([nameOf(next), ...hiltsOf(next)]).toEqual(['Pier', 'Pier'])
  })

  it('leaves a hilt that has a name of its own, and hilts of which there are several', () => {
    expect(hiltsOf(renamed(named('Mole', 'Buoy'), 'Pier'))).toEqual(['Buoy'])
    expect(hiltsOf(renamed(named('Mole', 'Mole', 'Mole'), 'Pier'))).toEqual(['Mole', 'Mole'])
  })
})
