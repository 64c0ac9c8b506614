import { readFile } from 'node:fs/promises'
import type { Download, Page } from '@playwright/test'
import { readThreeMf } from '../oracle/readers/three-mf.ts'
import { chosen, expect, open, test, typed, verdict } from './page.ts'

interface Read {
  readonly triangles: number
  readonly open: number
  readonly size: readonly number[]
  readonly least: readonly number[]
  readonly volume: number
}

/** A binary STL read from its bytes alone, welded by position. */
async function read(download: Download): Promise<Read> {
  const bytes = await readFile(await download.path())
  const triangles = bytes.readUInt32LE(80)
  expect(bytes.length).toBe(84 + 50 * triangles)
  const edges = new Map<string, number>()
  const [least, most] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ]
  let volume = 0
  for (let t = 0; t < triangles; t++) {
    const corners = [0, 1, 2].map((c) => [0, 1, 2].map((k) => bytes.readFloatLE(84 + 50 * t + 12 * (c + 1) + 4 * k)))
    for (const corner of corners)
      for (const [k, v] of corner.entries()) {
        least[k] = Math.min(least[k] as number, v)
        most[k] = Math.max(most[k] as number, v)
      }
    const names = corners.map(String)
    for (const i of [0, 1, 2]) {
      const [a, b] = [names[i] as string, names[(i + 1) % 3] as string]
      edges.set(`${a}|${b}`, (edges.get(`${a}|${b}`) ?? 0) + 1)
    }
    const [p, q, r] = corners as [number[], number[], number[]]
    const [px, py, pz, qx, qy, qz, rx, ry, rz] = [...p, ...q, ...r] as number[] & { length: 9 }
    volume +=
      ((px as number) * ((qy as number) * (rz as number) - (qz as number) * (ry as number)) +
        (py as number) * ((qz as number) * (rx as number) - (qx as number) * (rz as number)) +
        (pz as number) * ((qx as number) * (ry as number) - (qy as number) * (rx as number))) /
      6
  }
  const lonely = [...edges].filter(([edge, n]) => n !== 1 || edges.get(edge.split('|').toReversed().join('|')) !== 1)
  return { triangles, open: lonely.length, size: most.map((m, k) => m - (least[k] as number)), least, volume }
}

const save = (page: Page) => page.getByRole('button', { name: /^Save the sled/ })

test('the sled comes as a closed STL of the size that the drawing says', async ({ page }) => {
  await open(page, 'example')
  const coming = page.waitForEvent('download')
  await save(page).click()
  const download = await coming
  expect(download.suggestedFilename()).toBe('quick-check-sled.stl')
  const stl = await read(download)
  expect(stl.triangles).toBeGreaterThan(300)
  expect(stl.open).toBe(0)
  expect(stl.volume).toBeGreaterThan(1000)
  const drawn = await page.locator('.dimension text').filter({ hasText: 'sled' }).textContent()
  const [, diameter, length] = /⌀([\d.]+) × ([\d.]+)/.exec(drawn ?? '') ?? []
  expect(stl.size[0]).toBeCloseTo(Number(diameter), 1)
  expect(stl.size[1]).toBeCloseTo(Number(diameter), 1)
  expect(stl.size[2]).toBeCloseTo(Number(length), 1)
  expect(stl.least[2]).toBe(0)
  await expect(page.getByText('quick-check-sled.stl is saved, in millimetres')).toBeVisible()
})

test('the sled comes as 3MF, too, by the rules of the format', async ({ page }) => {
  await open(page, 'example')
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as 3MF' }).click()
  const download = await coming
  expect(download.suggestedFilename()).toBe('quick-check-sled.3mf')
  const { faults, objects } = readThreeMf(await readFile(await download.path()))
  expect(faults).toEqual([])
  expect(objects).toMatchObject([{ name: 'sled', min: [10, 10, 0] }])
  await expect(page.getByText('quick-check-sled.3mf is saved, in millimetres')).toBeVisible()
})

test('an unsure sled says so in its name', async ({ page }) => {
  await open(page, 'example')
  await typed(page, 'Thread at the mouth').fill('')
  await typed(page, 'Bore ⌀').fill('30.4')
  await chosen(page, 'Speaker').selectOption({ label: '24 mm speaker' })
  await typed(page, 'Depth').fill('105')
  await chosen(page, 'Board').selectOption({ label: 'Sound board, medium' })
  await expect(verdict(page)).toHaveText('Verdict: unsure')
  const coming = page.waitForEvent('download')
  await save(page).click()
  expect((await coming).suggestedFilename()).toBe('quick-check-unsure-sled.stl')
})

test('a clash holds the file back and says why', async ({ page }) => {
  await open(page, 'example')
  await typed(page, 'Bore ⌀').fill('27.2')
  await expect(verdict(page)).toHaveText('Verdict: clash')
  let saved = false
  page.on('download', () => {
    saved = true
  })
  await save(page).click()
  await expect(page.getByText(/^No file while there is a clash\. .+\d+\.\d+ mm/)).toBeVisible()
  expect(saved).toBe(false)
})
