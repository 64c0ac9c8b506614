import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { expect, it } from 'vitest'

const ROOT = join(import.meta.dirname, '..', '..')
const LONGEST = 400
const MEDIAN = 150

/** The size of every file that people write by hand: [path, lines]. */
const sizes = ['src', 'geometry', 'tests']
  .flatMap((folder) => readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs|css)$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
  .map((path) => ({ path: relative(ROOT, path), lines: readFileSync(path, 'utf8').trimEnd().split('\n').length }))
  .sort((a, b) => a.lines - b.lines)

it(`keeps every file within ${LONGEST} lines: a longer one holds more than one noun`, () => {
  expect(sizes.filter((file) => file.lines > LONGEST)).toEqual([])
})

it(`keeps the median file within ${MEDIAN} lines`, () => {
  expect(sizes.length).toBeGreaterThan(0)
  expect(sizes[Math.floor(sizes.length / 2)]?.lines).toBeLessThanOrEqual(MEDIAN)
})
