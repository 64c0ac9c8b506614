import { readFile } from 'node:fs/promises'
import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'
import { field, standing, step, typeSections } from './table.ts'

const line = (page: Page, section: string) => page.locator(`[id="sections/${section}"] .section-line`)
const sheet = (page: Page) => page.getByRole('dialog')

async function openDemo(page: Page): Promise<void> {
  await page.goto('./#demo/pier-lantern')
  await expect(page.getByRole('heading', { name: 'Sections, from the rear' })).toBeVisible()
  await expect(standing(page)).toContainText('clear')
}

/** The sheet of readings of the demo's main bore. */
async function openReadings(page: Page): Promise<void> {
  await openDemo(page)
  await line(page, 'body').click()
  await field(page, 'sections/body/bore/main/diameter').click()
  await expect(sheet(page)).toBeVisible()
}

const cell = (page: Page, reading: number, what: 'z' | 'theta' | 'value') =>
  field(page, `sections/body/bore/main/diameter/readings/${reading - 1}/${what}`)

test('a hilt of five sections with a thread and a pin, typed by keyboard alone', async ({ page }) => {
  await page.goto('./#new')
  await expect(field(page, 'sections/body/length')).toBeFocused()
  await expect(page.getByRole('img', { name: /z is 0 at the rear face/ })).toBeVisible()
  const tabTo = async (wanted: ReturnType<Page['locator']>) => {
    for (let i = 0; i < 80; i++) {
      if (await wanted.evaluate((e) => e === document.activeElement)) return
      await page.keyboard.press('Tab')
    }
    throw new Error(`no way to ${String(wanted)} by keyboard`)
  }
  const type = async (path: string, text: string) => {
    await tabTo(field(page, path))
    await page.keyboard.type(text)
  }
  const sections = [
    ['body', '150', '38', '30,1'],
    ['section', '20', '36', ''],
    ['section-2', '1 1/2"', '35', '28.2 ±0.05'],
    ['section-3', '40', '34', '26'],
    ['section-4', '2in', '33', '25..25.1'],
  ] as const
  for (const [id, length, outside, bore] of sections) {
    if (id !== 'body') {
      await tabTo(page.getByRole('button', { name: 'Add a section at the blade end' }))
      await page.keyboard.press('Enter')
    }
    await expect(field(page, `sections/${id}/length`)).toBeFocused()
    await page.keyboard.type(length)
    await type(`sections/${id}/outside/0/diameter`, outside)
    if (bore !== '') await type(`sections/${id}/bore/bore/diameter`, bore)
    else {
      await type(`sections/${id}/bore/bore/kind`, 'th')
      await type(`sections/${id}/bore/bore/thread`, 'M33x1.5')
    }
  }
  await tabTo(page.getByRole('button', { name: 'Add what sticks in' }))
  await page.keyboard.press('Enter')
  await expect(field(page, 'features/pin/at/z/by')).toBeFocused()
  await page.keyboard.type('12')
  await type('features/pin/shape/diameter', '4')
  // A pause in typing ends a step of undo; that a busy machine makes none of its own, the clock stands.
  await page.clock.setFixedTime(new Date())
  await type('features/pin/shape/reach', '2.5')
  // The interval of what was typed: 1 1/2 in is 38.1 mm, the crests of the thread 33 − 1.0825 · 1.5 = 31.376 mm.
  await expect(line(page, 'section-2')).toContainText('38.1')
  await expect(line(page, 'section-2')).toContainText('28.2')
  await expect(line(page, 'section')).toContainText(/31\.[3-6]/)
  await expect(line(page, 'section-4')).toContainText('50.8')
  await expect(page.getByText('No verdict')).toHaveCount(0)
  const drawn = page.getByText(/^Lengthwise section, cut at 0 degrees/)
  await expect(drawn).toContainText('bore 28.20 wide from 170.0 to 208.1')
  await expect(drawn).toContainText('pin at z 260.1')
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(field(page, 'features/pin/shape/reach')).toHaveValue('')
})

test('what sticks in goes onto the open section; an empty hilt has no verdict; the end leads on to Fill', async ({
  page,
}) => {
  await page.goto('./#new')
  await expect(page.getByRole('region', { name: 'Still wanted' })).toContainText('Length of the body')
  await typeSections(page, [
    { id: 'body', length: '120', outside: '38', bore: '30' },
    { id: 'section', length: '60', outside: '36', bore: '26' },
  ])
  await expect(standing(page)).toHaveText('Nothing to check yet')
  await expect(page.getByText('Nothing to check yet: nothing lies in the hilt.')).toBeVisible()
  await line(page, 'body').click()
  await page.getByRole('button', { name: 'Add what sticks in' }).click()
  await expect(field(page, 'features/pin/on')).toHaveValue('sections/body')
  await expect(
    page.getByRole('img', { name: /^Where to measure: the diameter across it; how far it sticks in/ }),
  ).toBeVisible()
  // With none open, it is asked where it is.
  await line(page, 'body').click()
  await page.getByRole('button', { name: 'Add a screw' }).click()
  await expect(field(page, 'screws/screw/on')).toBeFocused()
  await page.getByRole('button', { name: 'Go on to Fill' }).click()
  await expect(page.getByRole('heading', { name: 'Fill', exact: true })).toBeFocused()
  await expect(step(page, 'Fill')).toHaveAttribute('aria-current', 'step')
})

test('a section goes in after the one in hand', async ({ page }) => {
  await openDemo(page)
  await line(page, 'pommel').click()
  await page.getByRole('button', { name: 'Add one after it (a section after pommel)' }).click()
  await expect(field(page, 'sections/section/length')).toBeFocused()
  await expect(page.locator('[id="sections/pommel"] ~ [id="sections/section"] ~ [id="sections/body"]')).toHaveCount(1)
})

test('entries stay as typed, say what they came to and how they are known, and are questioned at once', async ({
  page,
}) => {
  await openDemo(page)
  await line(page, 'body').click()
  const neck = field(page, 'sections/body/bore/neck/diameter')
  const note = page.locator('[id="sections/body/bore/neck/diameter-note"]')
  await neck.fill('22,05 ±0.05')
  await expect(note).toHaveText('22–22.1')
  await expect(neck).toHaveValue('22,05 ±0.05')
  await neck.fill('0.87')
  await expect(note).toHaveText(/Inches\? 0\.87 in is 22\.098 mm/)
  await neck.fill('7/8"')
  await expect(note).toHaveText(/^22\.0\d–22\.3\d$/)
  await neck.fill('wide')
  await neck.blur()
  await expect(neck).toHaveAttribute('aria-invalid', 'true')
  await neck.fill('')
  await expect(page.locator('[id="sections/body"] .step').nth(2)).toContainText('readings …')
})

test('a problem leads to its field, also in a card that is closed', async ({ page }) => {
  await openDemo(page)
  await line(page, 'body').click()
  await field(page, 'sections/body/length').fill('')
  await line(page, 'pommel').click()
  await expect(field(page, 'sections/body/length')).toBeHidden()
  await page.getByRole('button', { name: 'Go to field' }).first().click()
  await expect(field(page, 'sections/body/length')).toBeFocused()
  await expect(field(page, 'sections/pommel/length')).toBeHidden()
})

test('pasted readings fill the sheet, and it says what they come to', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write'])
  await openReadings(page)
  await expect(sheet(page)).toContainText('oval by')
  await expect(cell(page, 3, 'value')).toHaveValue('30.01')
  await sheet(page).getByRole('button', { name: 'Add a reading' }).click()
  await expect(cell(page, 4, 'z')).toBeFocused()
  await page.evaluate(() => navigator.clipboard.writeText('40\t0\t30,04\n40\t60\t30,00\n40\t120\t30,03\n'))
  await page.keyboard.press('Control+v')
  await expect(cell(page, 6, 'value')).toHaveValue('30,03')
  await expect(cell(page, 5, 'theta')).toHaveValue('60')
  const figures = sheet(page).getByRole('region', { name: 'What they come to' })
  await expect(figures).toContainText('readings6')
  await expect(figures).toContainText('places2')
  await cell(page, 6, 'value').fill('1.18')
  await expect(sheet(page)).toContainText('factor of 25.4')
  await sheet(page).getByRole('button', { name: 'Take reading 6 out' }).click()
  await sheet(page).getByLabel('Known by').selectOption({ label: 'telescoping gauge' })
  await expect(figures).toContainText('places2')
  await page.keyboard.press('Escape')
  await expect(sheet(page)).toHaveCount(0)
  await expect(field(page, 'sections/body/bore/main/diameter')).toBeFocused()
  await expect(page.locator('[id="sections/body"]')).toContainText('5 readings, telescoping gauge')
})

test('readings go out as a table and come in again; what is none is told by its line', async ({ page }) => {
  await openReadings(page)
  await sheet(page).getByText('Many at once').click()
  const coming = page.waitForEvent('download')
  await sheet(page).getByRole('button', { name: 'Save as CSV' }).click()
  const saved = await coming
  expect(saved.suggestedFilename()).toMatch(/\.csv$/)
  const text = await readFile(await saved.path(), 'utf8')
  expect(text).toBe('depth,angle,diameter\r\n,0,30.02\r\n,60,29.98\r\n,120,30.01\r\n')
  await sheet(page)
    .locator('input[type=file]')
    .setInputFiles({
      name: 'more.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(`${text}no reading\r\n50,0,30.2\r\n`),
    })
  await expect(sheet(page)).toContainText('4 readings added.')
  await expect(sheet(page)).toContainText('Line 5 is left out')
  await expect(cell(page, 7, 'value')).toHaveValue('30.2')
  await expect(cell(page, 7, 'z')).toHaveValue('50')
  const box = sheet(page).getByLabel('A column of readings')
  await box.fill('30.05\nsee the note\n30.06')
  await sheet(page).getByRole('button', { name: 'Add these' }).click()
  await expect(cell(page, 9, 'value')).toHaveValue('30.06')
  // What was refused stays to be corrected, and "Done" takes what stands there.
  await expect(box).toHaveValue('see the note')
  await box.fill('30.04 mmm')
  await sheet(page).getByRole('button', { name: 'Done' }).click()
  await expect(box).toHaveValue('30.04 mmm')
  await box.fill('30.04')
  await sheet(page).getByRole('button', { name: 'Done' }).click()
  await expect(sheet(page)).toBeHidden()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(field(page, 'sections/body/bore/main/diameter')).toBeVisible()
})

test('a value nobody measured says so, and takes the green away', async ({ page }) => {
  await openDemo(page)
  await line(page, 'body').click()
  await page.getByRole('button', { name: /^Readings of Bore ⌀: 3 readings/ }).click()
  await sheet(page).getByLabel('Known by').selectOption('assumed')
  await expect(sheet(page)).toContainText('nobody measured it')
  await page.keyboard.press('Escape')
  await expect(page.getByRole('button', { name: 'Readings of Bore ⌀: assumed' })).toBeVisible()
  await expect(standing(page)).toContainText('unsure')
})

test('what others name is taken out with them, or kept', async ({ page }) => {
  await openDemo(page)
  await line(page, 'pommel').click()
  await page.getByRole('button', { name: 'Take out pommel' }).click()
  const asked = page.getByRole('group', { name: 'Take pommel out?' })
  await expect(asked).toContainText('joint of pommel and body')
  await asked.getByRole('button', { name: 'Keep it' }).click()
  await expect(line(page, 'pommel')).toBeVisible()
  await page.getByRole('button', { name: 'Take out pommel' }).click()
  await asked.getByRole('button', { name: 'Take all of it out' }).click()
  await expect(line(page, 'pommel')).toHaveCount(0)
  await expect(page.locator('.joint-line')).toHaveCount(0)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(line(page, 'pommel')).toBeVisible()
  await expect(page.locator('.joint-line')).toHaveCount(1)
})

for (const theme of ['light', 'dark'] as const)
  test.describe(`in the ${theme} look`, () => {
    test.use({ colorScheme: theme })

    test('axe finds nothing on the measure step and the sheet of readings', async ({ page }) => {
      await openDemo(page)
      await line(page, 'body').click()
      await page.getByRole('button', { name: 'Add what sticks in' }).click()
      const faults = async () => {
        const { violations } = await new AxeBuilder({ page }).include('.measure').analyze()
        return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}: ${n.failureSummary}`))
      }
      expect(await faults()).toEqual([])
      await page.getByRole('button', { name: /^Readings of Diameter/ }).click()
      await sheet(page).getByText('Many at once').click()
      expect(await faults()).toEqual([])
    })
  })

test('on a phone, also with large text, nothing is cut off and every target can be hit', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openDemo(page)
  await line(page, 'body').click()
  for (const size of ['100%', '200%']) {
    await page.evaluate((s) => {
      document.documentElement.style.fontSize = s
    }, size)
    const cut = await page.locator('.measure').evaluate((e) => e.scrollWidth - e.clientWidth)
    expect(cut).toBeLessThanOrEqual(0)
  }
  const small = await page.locator('.measure :is(button, input, select, summary)').evaluateAll((all) =>
    all
      .filter((e) => e.checkVisibility() && !(e instanceof HTMLInputElement && e.type === 'checkbox'))
      .map((e) => ({ name: e.textContent || e.id, box: e.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 24 || box.height < 24)
      .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
  )
  expect(small).toEqual([])
})

test('a step is entered at its top, whatever was scrolled to before, and is the one that is open after a reload', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 })
  await openDemo(page)
  const title = (name: string) => page.getByRole('heading', { name, exact: true, level: 2 })
  await line(page, 'body').click()
  await page.getByRole('button', { name: 'Go on to Fill' }).scrollIntoViewIfNeeded()
  await step(page, 'Sled').click()
  await expect(title('Sled')).toBeInViewport({ ratio: 1 })
  await page.getByRole('button', { name: 'Go on to Print' }).scrollIntoViewIfNeeded()
  await page.getByRole('button', { name: 'Go on to Print' }).click()
  await expect(title('Print')).toBeInViewport({ ratio: 1 })
  await expect(title('Print')).toBeFocused()
  await page.reload()
  await expect(step(page, 'Print')).toHaveAttribute('aria-current', 'step')
  // A change makes the demo a job of its own, at another address.
  await step(page, 'Fill').click()
  await field(page, 'parts/board/at/z').fill('134.5')
  await expect(page).toHaveURL(/#job\//)
  await page.reload()
  await expect(step(page, 'Fill')).toHaveAttribute('aria-current', 'step')
})

test('a joint takes its thread from the bore, and asks where it is told another', async ({ page }) => {
  await openDemo(page)
  await page.locator('.joint-line').click()
  const note = page.locator('[id="joints/pommel-body/thread-note"]')
  const thread = field(page, 'joints/pommel-body/thread')
  await expect(note).toHaveText('M32 × 1, the same as the mouth thread, body')
  await thread.fill('M33x1')
  await thread.blur()
  await expect(note).toHaveText('The mouth thread, body says M32x1.')
  await thread.fill('')
  await expect(note).toHaveText('M32x1, as the mouth thread, body says')
  await expect(page.locator('.joint-line')).toContainText('threaded M32x1')
})

test('the only hilt and its job have one name, in either field', async ({ page }) => {
  await openDemo(page)
  const job = page.getByRole('textbox', { name: 'Name of the job' })
  const hilt = page.getByRole('textbox', { name: 'Name of the hilt' })
  const note = page.locator('[id="hilts/hilt/name-note"]')
  await job.fill('Harbour')
  await expect(hilt).toHaveValue('Harbour')
  await expect(note).toHaveText('the job has the same name')
  await hilt.fill('Rear light')
  await expect(job).toHaveValue('Rear light')
  await page.getByText('Job', { exact: true }).click()
  await page.getByRole('button', { name: 'Rename' }).click()
  await expect(job).toBeFocused()
  await page.keyboard.type('Quay')
  await expect(hilt).toHaveValue('Quay')
})
