import { chosen, expect, finding, open, test, typed, verdict } from './page.ts'

test('six numbers and three choices lead to a verdict', async ({ page }) => {
  await open(page, 'empty')
  await expect(page.getByText('Still wanted: bore, depth, cell.')).toBeVisible()
  await typed(page, 'Bore ⌀').fill('33.2')
  await typed(page, 'Depth').fill('148')
  await expect(page.getByText('Still wanted: cell.')).toBeVisible()
  await chosen(page, 'Cell').selectOption({ label: '18650 cell, flat top' })
  await expect(verdict(page)).toHaveText('Verdict: clear')
  await chosen(page, 'Speaker').selectOption({ label: 'Own sizes, measured' })
  await expect(page.getByText('Still wanted: diameter of the speaker, length of the speaker.')).toBeVisible()
  await typed(page, 'Speaker: Diameter').fill('28')
  await typed(page, 'Speaker: Depth').fill('5.4')
  await chosen(page, 'Board').selectOption({ label: 'Sound board, small' })
  await expect(verdict(page)).toHaveText('Verdict: clear')
  await expect(finding(page, 'speaker in its nest')).toHaveCount(1)
  await expect(page.getByRole('img', { name: /^Lengthwise section.*cell from.*board from/ })).toBeVisible()
  await expect(page.getByRole('img', { name: /^Cross-section at z .*sled to bore/ })).toBeVisible()
})

test('the answer follows every key, and no verdict outlives its numbers', async ({ page }) => {
  await open(page, 'example')
  const bore = typed(page, 'Bore ⌀')
  await bore.fill('27.2')
  await expect(verdict(page)).toHaveText('Verdict: clash')
  await bore.fill('')
  await expect(verdict(page)).toHaveCount(0)
  await expect(page.getByText('No verdict yet. Still wanted: bore.')).toBeVisible()
  await expect(page.getByText('Drawn from the numbers before')).toBeVisible()
  await bore.pressSequentially('33.2')
  await expect(verdict(page)).toHaveText('Verdict: clear')
  await expect(page.getByText('Drawn from the numbers before')).toHaveCount(0)
})

test('a clash says where, by how much and why; its fix is applied and undone', async ({ page }) => {
  await open(page, 'example')
  await typed(page, 'Thread at the mouth').fill('')
  await typed(page, 'Bore ⌀').fill('27.2')
  await expect(verdict(page)).toHaveText('Verdict: clash')
  const speaker = finding(page, 'speaker in place')
  await speaker.getByRole('button', { name: /^Speaker in place/i }).click()
  await expect(speaker.getByText(/overlap by 0\.40 mm as measured/)).toBeVisible()
  await expect(speaker.getByText(/0\.15 mm; least clearance: common practice, no source/)).toBeVisible()
  await expect(page.getByText(/z 3\.0 mm, from the rear/)).toBeVisible()
  await speaker.getByRole('button', { name: 'Apply' }).click()
  const diameter = typed(page, 'Speaker: Diameter')
  await expect(diameter).not.toHaveValue('28')
  // One number mends all that the speaker clashed with.
  await expect(page.locator('.finding-clash')).toHaveCount(0)
  await expect(diameter).toHaveAttribute('data-changed', '')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(diameter).toHaveValue('28')
  await expect(diameter).not.toHaveAttribute('data-changed', '')
  await expect(finding(page, 'speaker in place')).toHaveClass(/finding-clash/)
})

for (const viewport of [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
])
  test(`a fix leaves verdict and way back in view, by keyboard too, at ${viewport.width}`, async ({ page }) => {
    await page.setViewportSize(viewport)
    await open(page, 'example')
    await typed(page, 'Thread at the mouth').fill('')
    await typed(page, 'Bore ⌀').fill('27.2')
    const band = page.getByRole('region', { name: 'Verdict: clash' })
    const diameter = typed(page, 'Speaker: Diameter')
    const applied = page.getByText(/^Applied: Use another speaker/)
    await band.getByRole('button', { name: 'Apply' }).press('Enter')
    await expect(applied).toBeFocused()
    await expect(verdict(page)).toBeInViewport()
    await expect(diameter).not.toHaveValue('28')
    await page.keyboard.press('Tab')
    await expect(page.getByRole('button', { name: 'Undo' })).toBeFocused()
    await page.keyboard.press('Enter')
    await expect(page.getByText('Undone: as it was before.')).toBeFocused()
    await expect(diameter).toHaveValue('28')
    await band.getByRole('button', { name: 'Apply' }).click()
    await expect(applied).toBeInViewport()
    await page.keyboard.press('Control+z')
    await expect(diameter).toHaveValue('28')
    await band.getByRole('button', { name: 'Apply' }).click()
    await diameter.press('End')
    await page.keyboard.type('1')
    await expect(applied).toHaveCount(0)
  })

test('only the file is held back by a clash, and the banner gives its tightest place room', async ({ page }) => {
  await open(page, 'example')
  await typed(page, 'Thread at the mouth').fill('')
  await typed(page, 'Bore ⌀').fill('27.2')
  const note = await page.getByText('Held back by the clash.').boundingBox()
  const file = await page.getByRole('button', { name: 'Save the sled (STL)' }).boundingBox()
  const on = await page.getByRole('link', { name: 'Go on as a full job' }).boundingBox()
  if (!note || !file || !on) throw new Error('not all there')
  expect(note.x).toBe(file.x)
  expect(note.x + note.width).toBeLessThan(on.x)
  for (const width of [390, 820, 1280, 1920]) {
    await page.setViewportSize({ width, height: 900 })
    expect((await page.locator('.verdict-tightest').boundingBox())?.width).toBeGreaterThan(290)
  }
})

test('on a phone the whole hilt is in view, and the bar at its foot takes two lines', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await open(page, 'example')
  await typed(page, 'Thread at the mouth').fill('')
  await typed(page, 'Bore ⌀').fill('27.2')
  await expect(page.locator('.dock')).toContainText('Sled cannot be built')
  expect((await page.locator('.dock').boundingBox())?.height).toBeLessThan(64)
  await expect.poll(() => page.locator('.strip').evaluate((e) => e.scrollWidth - e.clientWidth)).toBeLessThanOrEqual(0)
})

test('what only moves the clash elsewhere is the weaker offer, and says so', async ({ page }) => {
  await open(page, 'example')
  await typed(page, 'Thread at the mouth').fill('')
  await typed(page, 'Bore ⌀').fill('27.2')
  await typed(page, 'Speaker: Diameter').fill('27')
  await typed(page, 'Sled ⌀').fill('28.05')
  const wall = finding(page, 'sled cannot be built').getByRole('listitem')
  await expect(wall.first().getByRole('button', { name: 'Apply', exact: true })).toBeVisible()
  await expect(wall.last()).toContainText('But then it clashes')
  await wall.last().getByRole('button', { name: 'Apply anyway' }).click()
  await expect(page.getByText(/^Applied: .* But then it clashes/)).toBeVisible()
  await expect(page.getByRole('button', { name: /^Apply/ })).not.toHaveCount(0)
  await typed(page, 'Depth').fill('')
  await expect(page.locator('.old .button-small')).toHaveCount(0)
})

test('doubt is met with what to measure next, and the way to its field', async ({ page }) => {
  await open(page, 'example')
  await typed(page, 'Thread at the mouth').fill('')
  await typed(page, 'Bore ⌀').fill('30.4')
  await chosen(page, 'Speaker').selectOption({ label: '24 mm speaker' })
  await typed(page, 'Depth').fill('105')
  await chosen(page, 'Board').selectOption({ label: 'Sound board, medium' })
  await expect(verdict(page)).toHaveText('Verdict: unsure')
  const band = page.getByRole('region', { name: 'Verdict: unsure' })
  await expect(
    band.getByText('Measure the height of what stands on the board: of what a reading can settle, it moves this most.'),
  ).toBeVisible()
  await band.getByRole('button', { name: 'Go to field: board' }).click()
  await expect(typed(page, 'Board: Height')).toBeFocused()
  for (const [side, size] of [
    ['Width', '18'],
    ['Height', '5'],
    ['Length', '42'],
  ])
    await typed(page, `Board: ${side}`).fill(size as string)
  await expect(verdict(page)).toHaveText('Verdict: clear')
})

test('entries are taken as people type them, echoed in millimetres and kept as typed', async ({ page }) => {
  await open(page, 'example')
  const bore = typed(page, 'Bore ⌀')
  for (const [typed, echo] of [
    ['1 5/16"', /33\.\d+–33\.\d+ mm/],
    ['33,2 ±0,05', /33\.15–33\.25 mm/],
    ['33,2', /33\.\d+–33\.\d+ mm/],
    ['33.1..33.4', /33\.1–33\.4 mm/],
  ] as const) {
    await bore.fill(typed)
    await expect(bore).toHaveAccessibleDescription(echo)
    await bore.blur()
    await expect(bore).toHaveValue(typed)
    await expect(verdict(page)).toBeVisible()
  }
})

test('what is not understood is told from what is not there, and a comma is read at once', async ({ page }) => {
  await open(page, 'empty')
  await typed(page, 'Depth').fill('150,5')
  await expect(typed(page, 'Depth')).toHaveAccessibleDescription('150.5 mm')
  await typed(page, 'Bore ⌀').fill('abc')
  await expect(page.getByText('No verdict yet. Not understood: bore. Still wanted: cell.')).toBeVisible()
})

test('the form stays where it is at the first key', async ({ page }) => {
  await open(page, 'empty')
  const bore = typed(page, 'Bore ⌀')
  const before = await bore.boundingBox()
  await bore.fill('33.2')
  await expect(page.getByRole('button', { name: 'Try it with invented numbers' })).toBeDisabled()
  expect(await bore.boundingBox()).toEqual(before)
})

test('where the browser keeps nothing, the page works and says so', async ({ page }) => {
  await page.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage'])
      Object.defineProperty(window, name, {
        get: () => {
          throw new DOMException('refused', 'SecurityError')
        },
      })
  })
  await open(page, 'example')
  await typed(page, 'Bore ⌀').fill('33.4')
  await expect(verdict(page)).toHaveText('Verdict: clear')
  await expect(page.getByText('only until this page is closed; nothing is sent')).toBeVisible()
})

test('what looks like a slip is asked about, what is none is refused, each at its field', async ({ page }) => {
  await open(page, 'example')
  const bore = typed(page, 'Bore ⌀')
  await bore.fill('1.3')
  await expect(bore).toHaveAccessibleDescription(/Inches\? 1\.3 in is 33\.02 mm/)
  await bore.fill('33 1/2')
  await bore.blur()
  await expect(bore).toHaveAccessibleDescription(/A fraction may be inches/)
  await expect(bore).toHaveAttribute('aria-invalid', 'true')
  const thread = typed(page, 'Thread at the mouth')
  await thread.fill('G1/2')
  await expect(thread).toHaveAccessibleDescription(/Only 60° threads/)
})

test('the mouse wheel changes no value', async ({ page }) => {
  await open(page, 'example')
  for (const control of [
    typed(page, 'Bore ⌀'),
    page.getByLabel('Height of the cross-section'),
    page.getByLabel('Cut at θ'),
  ]) {
    const before = await control.inputValue()
    await control.focus()
    await control.hover()
    await page.mouse.wheel(0, 240)
    await expect(control).toHaveValue(before)
  }
})

test('the plane of the cross-section follows the pointer and the cut angle turns the section', async ({ page }) => {
  await open(page, 'example')
  const section = page.getByRole('img', { name: /^Lengthwise section/ })
  const box = await section.boundingBox()
  if (!box) throw new Error('no section')
  await page.mouse.move(box.x + 160, box.y + 110)
  await page.mouse.down()
  await page.mouse.move(box.x + 300, box.y + 110, { steps: 6 })
  await page.mouse.up()
  const plane = page.getByLabel('Height of the cross-section')
  const z = Number(await plane.inputValue())
  expect(z).toBeGreaterThan(20)
  await expect(page.getByRole('img', { name: new RegExp(`^Cross-section at z ${z.toFixed(1)}`) })).toBeVisible()
  await page.getByLabel('Cut at θ').fill('90')
  await expect(page.getByRole('img', { name: /^Lengthwise section, cut at 90 degrees/ })).toBeVisible()
})

test('emptying the form leaves nothing of an answer, and can be undone', async ({ page }) => {
  await open(page, 'example')
  await page.getByRole('button', { name: 'Empty the form' }).click()
  await expect(verdict(page)).toHaveCount(0)
  await expect(typed(page, 'Bore ⌀')).toHaveValue('')
  await expect(page.getByRole('button', { name: 'Try it with invented numbers' })).toBeVisible()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(typed(page, 'Bore ⌀')).toHaveValue('33.2')
  await expect(page.getByText(/^Invented numbers/)).toBeVisible()
})

test('the numbers are there as typed after a reload and in a new tab, and none changes under the hand', async ({
  page,
  context,
}) => {
  await open(page, 'example')
  await typed(page, 'Bore ⌀').fill('33 1/2')
  await typed(page, 'Depth').fill('150,5')
  await page.reload()
  await expect(typed(page, 'Bore ⌀')).toHaveValue('33 1/2')
  await expect(typed(page, 'Depth')).toHaveValue('150,5')
  await expect(typed(page, 'Speaker: Diameter')).toHaveValue('28')
  const other = await context.newPage()
  await open(other, 'empty')
  await expect(typed(other, 'Bore ⌀')).toHaveValue('33 1/2')
  await typed(other, 'Bore ⌀').fill('40')
  await expect(typed(page, 'Bore ⌀')).toHaveValue('33 1/2')
  await page.reload()
  await expect(typed(page, 'Bore ⌀')).toHaveValue('33 1/2')
  await page.getByRole('button', { name: 'Empty the form' }).click()
  await page.goto('./')
  await expect(typed(page, 'Bore ⌀')).toHaveValue('')
})
