import { expect, test } from './page.ts'

test('a phone shows the verdict once, at its foot, and gives the room to the drawing', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto('./#demo/ferry-lantern')
  await expect(page.locator('.dock')).toContainText(/clear/i)
  await expect(page.locator('.dock')).toBeInViewport({ ratio: 1 })
  // It is still told to who listens.
  await expect(page.locator('p.standing')).toHaveText(/clear/i)
  expect((await page.locator('p.standing').boundingBox())?.height).toBeLessThanOrEqual(1)
  await page.setViewportSize({ width: 1280, height: 800 })
  expect((await page.locator('p.standing').boundingBox())?.height).toBeGreaterThan(30)
  await expect(page.locator('.dock')).toBeHidden()
})

for (const width of [390, 820, 1280, 1920])
  test(`pictures to choose from stand in one row or one column at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 1000 })
    await page.goto('./#demo/ferry-lantern')
    await page.getByRole('button', { name: 'Sled', exact: true }).click()
    await expect(page.locator('.picture-option')).toHaveCount(6)
    for (const choice of await page.locator('.picture-choice').all()) {
      const boxes = await choice
        .locator('.picture-option')
        .evaluateAll((all) =>
          all.map((e) => e.getBoundingClientRect()).map(({ x, y }) => [Math.round(x), Math.round(y)]),
        )
      const [columns, rows] = [0, 1].map((i) => new Set(boxes.map((b) => b[i])).size)
      expect(['1 × 3', '3 × 1']).toContain(`${columns} × ${rows}`)
    }
  })
