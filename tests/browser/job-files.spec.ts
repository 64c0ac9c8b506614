import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { expect, test } from './page.ts'

const name = (page: Page) => page.getByRole('textbox', { name: 'Name of the job' })

async function menu(page: Page, item: string): Promise<void> {
  await page.getByText('Job', { exact: true }).click()
  await page.getByRole('button', { name: item }).click()
}

const lines = (value: object) => Buffer.from(JSON.stringify(value))

/** A sound project with one field that no release knows. */
const project = {
  format: 'sledwright',
  version: 1,
  job: [{ id: 'job', name: 'From a file', bench: 'the left one' }],
  sections: [{ id: 'body', length: 120, bore: [{ id: 'bore', diameter: 30 }] }],
}

test.describe('where a page cannot choose a place', () => {
  test.beforeEach(({ page }) =>
    page.addInitScript(() => {
      Reflect.deleteProperty(globalThis, 'showSaveFilePicker')
      Reflect.deleteProperty(globalThis, 'showOpenFilePicker')
    }),
  )

  async function choose(page: Page, file: string, buffer: Buffer): Promise<void> {
    const asked = page.waitForEvent('filechooser')
    await page.getByRole('button', { name: 'Open a file …' }).click()
    await (await asked).setFiles({ name: file, mimeType: 'application/json', buffer })
  }

  test('a file is opened, changed and saved again with the fields nobody knows', async ({ page }) => {
    await page.goto('./#jobs')
    await choose(page, 'lantern.json', lines(project))
    await expect(name(page)).toHaveValue('From a file')
    await expect(page.getByText('Not understood here, and kept as it is: job/job/bench')).toBeVisible()
    await name(page).fill('Changed here')
    const coming = page.waitForEvent('download')
    await page.keyboard.press('Control+s')
    const download = await coming
    expect(download.suggestedFilename()).toBe('changed-here.json')
    const text = await readFile(await download.path(), 'utf8')
    expect(JSON.parse(text)).toMatchObject({
      ...project,
      job: [{ id: 'job', name: 'Changed here', bench: 'the left one' }],
    })
  })

  test('a file of a newer release is refused, said to be untouched, and not kept', async ({ page }) => {
    await page.goto('./#jobs')
    await choose(page, 'later.json', lines({ ...project, version: 7 }))
    const dialog = page.getByRole('dialog', { name: 'later.json is of a newer release' })
    await expect(dialog).toContainText('The file is as it was.')
    await expect(dialog.getByRole('table')).toContainText('7')
    await dialog.getByRole('button', { name: 'Close' }).click()
    await expect(dialog).toBeHidden()
    await expect(page.locator('.job-row')).toHaveCount(0)
  })

  test('what is wrong with a file is listed with its place, value and way out', async ({ page }) => {
    await page.goto('./#jobs')
    await choose(page, 'wrong.json', lines({ ...project, sections: 'none', printer: [{ id: 'p', bead: -1 }] }))
    const rows = page.getByRole('dialog', { name: 'wrong.json was not opened' }).getByRole('row')
    await expect(rows.filter({ hasText: 'sections' })).toContainText('a list')
    await expect(rows.filter({ hasText: 'printer/p/bead' })).toContainText('-1')
  })

  test('a file dropped on the quick check is opened in its place', async ({ page }) => {
    await page.goto('./')
    const drop = async (file: string, text: string) => {
      const files = await page.evaluateHandle(
        ([n, t]) => {
          const held = new DataTransfer()
          held.items.add(new File([t ?? ''], n ?? '', { type: 'application/json' }))
          return held
        },
        [file, text],
      )
      await page.dispatchEvent('main', 'drop', { dataTransfer: files })
    }
    await drop('torn.json', '{"format": "sledw')
    const dialog = page.getByRole('dialog', { name: 'torn.json was not opened' })
    await expect(dialog).toContainText('It stops being JSON at character 17.')
    await dialog.getByRole('button', { name: 'Close' }).click()
    await drop('lantern.json', JSON.stringify(project))
    await expect(name(page)).toHaveValue('From a file')
  })
})

test('where it can, it saves to the file that it was opened from', async ({ page }) => {
  await page.addInitScript((text) => {
    const disk = async (file: string) => (await navigator.storage.getDirectory()).getFileHandle(file, { create: true })
    const written = async () => {
      const handle = await disk('lantern.json')
      const stream = await handle.createWritable()
      await stream.write(text)
      await stream.close()
      return handle
    }
    Object.assign(globalThis, {
      showOpenFilePicker: async () => [await written()],
      showSaveFilePicker: async () => disk('another.json'),
    })
  }, JSON.stringify(project))
  const onDisk = (file: string) =>
    page.evaluate(async (n) => {
      const handle = await (await navigator.storage.getDirectory()).getFileHandle(n)
      return JSON.parse(await (await handle.getFile()).text()).job[0].name
    }, file)
  await page.goto('./#jobs')
  await page.getByRole('button', { name: 'Open a file …' }).click()
  await expect(name(page)).toHaveValue('From a file')
  await name(page).fill('Changed here')
  await menu(page, 'Save as a file')
  await expect(page.getByText('Saved as lantern.json.')).toBeVisible()
  expect(await onDisk('lantern.json')).toBe('Changed here')
  await page.reload()
  await name(page).fill('Changed once more')
  await menu(page, 'Save as another file …')
  await expect(page.getByText('Saved as another.json.')).toBeVisible()
  expect(await onDisk('another.json')).toBe('Changed once more')
  expect(await onDisk('lantern.json')).toBe('Changed here')
})
