import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'

type Lock = { packages: Record<string, { resolved?: string; integrity?: string; link?: boolean }> }

const text = readFileSync(join(import.meta.dirname, '..', '..', 'package-lock.json'), 'utf8')
const packages = Object.entries((JSON.parse(text) as Lock).packages).filter(([path]) => path !== '')

it('names no place to fetch from: every clone uses the registry that its npm is set to', () => {
  expect(packages.filter(([, locked]) => locked.resolved !== undefined).map(([path]) => path)).toEqual([])
})

it('pins the content of every package', () => {
  expect(packages.length).toBeGreaterThan(0)
  expect(packages.filter(([, locked]) => locked.integrity === undefined).map(([path]) => path)).toEqual([])
})
