import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { readThreeMf } from '../oracle/readers/three-mf.ts'
import { chosen, expect, open, test, typed, verdict } from './page.ts'
import { readStl } from './stl.ts'

const save = (page: Page) => page.getByRole('button', { name: /^Save the sled/ })

test('the sled comes as a closed STL of the size that the drawing says', async ({ page }) => {
  await open(page, 'example')
  const coming = page.waitForEvent('download')
  await save(page).click()
  const download = await coming
  expect(download.suggestedFilename()).toBe('quick-check-sled.stl')
  const stl = await readStl(download)
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
