import type { Locator, Page } from '@playwright/test'
import { expect, finding, test } from './page.ts'
import { readStl } from './stl.ts'
import { field, saved, standing, step, type TypedSection, typeSections, undo } from './table.ts'

/** The whole way in one go, each step of it judged and drawn. */
test.describe.configure({ timeout: 240_000 })

const hilt: readonly TypedSection[] = [
  { id: 'body', length: '12 mm', outside: '38', thread: 'M34x1.5' },
  { id: 'section', length: '150', outside: '38', bore: '33' },
  { id: 'section-2', length: '20', outside: '36', bore: '26' },
  { id: 'section-3', length: '1 1/2"', outside: '34', bore: '25,4' },
  { id: 'section-4', length: '25.4 ±0.05', outside: '33', bore: '25' },
]

/** 63 mm into the second section is z 75; 4 mm wide, its rear edge is at z 73. */
async function typePin(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Add what sticks in' }).click()
  await field(page, 'features/pin/on').selectOption('sections/section')
  await expect(field(page, 'features/pin/at/z/of')).toHaveValue('sections/section')
  await field(page, 'features/pin/at/z/by').fill('63')
  await field(page, 'features/pin/at/theta').fill('180')
  await field(page, 'features/pin/shape/diameter').fill('4')
  await field(page, 'features/pin/shape/reach').fill('2.5')
}

const parts = ['Cell', 'Contact', 'Contact', 'Board', 'Speaker', 'Switch']

async function fillIt(page: Page): Promise<void> {
  await step(page, 'Fill').click()
  for (const [i, kind] of parts.entries()) {
    await page.getByRole('button', { name: `Add a part: ${kind}` }).click()
    await expect(page.locator('.fill-part')).toHaveCount(i + 1)
  }
}

/** Heights z of the rings in the strips, read off the ruler that is drawn above them. */
async function ringed(page: Page): Promise<number[]> {
  const middle = async (e: Locator) => {
    const box = await e.boundingBox()
    if (!box) throw new Error('not drawn')
    return box.x + box.width / 2
  }
  const tick = (z: number) => page.locator('.ruler-strip').getByText(String(z), { exact: true })
  const [x0, x200] = [await middle(tick(0)), await middle(tick(200))]
  const rings = await page.locator('.strips .place').all()
  return Promise.all(rings.map(async (ring) => ((await middle(ring)) - x0) / ((x200 - x0) / 200)))
}

test('from an empty page to a printed file and back: measured, filled, mended, saved, undone', async ({ page }) => {
  await page.goto('./#new')
  await typeSections(page, hilt)
  await typePin(page)
  await expect(page.locator('.section-line')).toHaveCount(5)
  await fillIt(page)

  // The sled would be pushed past the pin: the clash is where it first comes against it.
  await expect(standing(page)).toContainText('clash')
  const [onTheWay, inPlace] = [finding(page, 'Sled on the way in: pin'), finding(page, 'Sled in place: pin')]
  await inPlace.getByRole('button').first().click()
  await expect(onTheWay).not.toHaveAttribute('data-open')
  await onTheWay.getByRole('button').first().click()
  await expect(onTheWay).toContainText('z 73.0 mm, θ 180°')
  const cursor = page.getByRole('slider', { name: /^Cursor along the hilt/ })
  await expect(cursor).toHaveAttribute('aria-valuetext', 'z 73.0 mm, θ 180°')
  const rings = await ringed(page)
  expect(rings.length).toBeGreaterThanOrEqual(2)
  for (const z of rings) expect(Math.abs(z - 73)).toBeLessThan(0.5)

  // One click mends it.
  const fix = onTheWay.getByRole('listitem').filter({ hasText: 'Cut a window for pin into the sled. Widen its window' })
  await fix.getByRole('button', { name: 'Apply' }).click()
  await expect(standing(page)).toContainText('clear')
  await expect(page.locator('.finding-clash, .finding-unsure')).toHaveCount(0)

  // The file is closed, and as large as the sled that was planned.
  await step(page, 'Sled').click()
  const planned = async (path: string) => Number(await field(page, path).getAttribute('placeholder'))
  const [diameter, from, to] = [
    await planned('sleds/main/diameter'),
    await planned('sleds/main/from'),
    await planned('sleds/main/to'),
  ]
  // Crests of M34 × 1.5 leave 34 − 1.0825 · 1.5 = 32.376 mm.
  expect(diameter).toBeGreaterThan(31)
  expect(diameter).toBeLessThan(32.376)
  await step(page, 'Print').click()
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save STL' }).click()
  const stl = await readStl(await coming)
  expect(stl.open).toBe(0)
  expect(stl.size[0]).toBeCloseTo(diameter, 1)
  expect(stl.size[1]).toBeCloseTo(diameter, 1)
  expect(Math.abs((stl.size[2] as number) - (to - from))).toBeLessThan(0.11)
  expect(stl.least[2]).toBe(0)

  // All of it is there again, and the last step can be taken back.
  await expect(saved(page)).toHaveText(/^saved/)
  await page.reload()
  await expect(standing(page)).toContainText('clear')
  await step(page, 'Measure').click()
  await expect(page.locator('.section-line')).toHaveCount(5)
  for (const { id, length } of hilt) await expect(field(page, `sections/${id}/length`)).toHaveValue(length)
  await expect(field(page, 'sections/body/bore/bore/thread')).toHaveValue('M34x1.5')
  await expect(field(page, 'features/pin/shape/reach')).toHaveValue('2.5')
  await step(page, 'Fill').click()
  await expect(page.locator('.fill-part')).toHaveCount(parts.length)
  await undo(page).click()
  await expect(standing(page)).toContainText('clash')
  await page.getByRole('button', { name: 'Redo' }).click()
  await expect(standing(page)).toContainText('clear')
})
