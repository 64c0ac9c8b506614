import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { SledInput } from '../../../src/project/schema/sled.ts'
import { cell, job, leaf, nest, spring } from '../sled/planned.ts'
import { runHere } from './command.ts'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sledwright-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** What the command says to a sled with these faults, and the files it wrote. */
async function made(sled: Partial<SledInput>) {
  const project = join(folder, 'faulty.json')
  const out = join(folder, 'out')
  writeFileSync(project, JSON.stringify(job(sled, { parts: [cell(), spring(), leaf()] })))
  const { code, out: said, err } = await runHere(['sled', project, '--out', out])
  return { code, said: `${said}${err}`.replace(/\s+/g, ' '), files: existsSync(out) ? readdirSync(out) : [] }
}

const cradle = (typed: object) => ({
  construction: 'open-cradle' as const,
  nests: [nest('cell', { style: 'cradle', opening: 0, ...typed })],
})

describe('a sled that cannot be built is named by its dimension, with the nearest that works, and leaves no file', () => {
  it.each<[string, Partial<SledInput>, string, string, string]>([
    [
      'a nest larger than the body',
      { nests: [nest('cell', { pocketRadius: 13 })] },
      'sleds/main/nests/parts/cell/pocketRadius',
      '13.00',
      '12.80',
    ],
    ['an arm thinner than the bead', cradle({ arm: 0.3 }), 'sleds/main/nests/parts/cell/arm', '0.3 mm', '0.45'],
    ['a wrap that closes', cradle({ wrap: 75 }), 'sleds/main/nests/parts/cell/wrap', '75°', 'is 60'],
    [
      'rods through the cell',
      { rods: [{ id: 'a', theta: 90, r: 5 }] },
      'sleds/main/rods/a/theta',
      'into a part',
      'No place',
    ],
    [
      'a split through a contact',
      { splits: [{ id: 's', z: 86.5, joint: 'plain' }] },
      'sleds/main/splits/s/z',
      'through leaf',
      '88.0',
    ],
  ])('%s', async (_what, sled, field, got, nearest) => {
    const { code, said, files } = await made(sled)
    expect(code).toBe(2)
    expect(said).toContain('cannot be built')
    for (const words of [field, got, nearest]) expect(said).toContain(words)
    expect(files).toEqual([])
  })
})
