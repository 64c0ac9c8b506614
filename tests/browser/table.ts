import type { Locator, Page } from '@playwright/test'

/** What the specs of the work page share. */

/** A field by the path it stands for. */
export const field = (page: Page, path: string): Locator => page.locator(`[id="${path}"]`)

export const standing = (page: Page): Locator => page.locator('.standing')

export const saved = (page: Page): Locator => page.locator('.saved-note')

export const undo = (page: Page): Locator => page.getByRole('button', { name: 'Undo', exact: true })

/** A step of the job by its name in the bar. */
export const step = (page: Page, name: string): Locator =>
  page.getByRole('navigation', { name: 'Steps of the job' }).getByRole('button', { name, exact: true })

/** A section as one types it: by the id it comes to have; a bore or the thread in it. */
export interface TypedSection {
  readonly id: string
  readonly length: string
  readonly outside: string
  readonly bore?: string
  readonly thread?: string
}

/** Types the sections of a new job, the first of which is there already. */
export async function typeSections(page: Page, sections: readonly TypedSection[]): Promise<void> {
  for (const [i, { id, length, outside, bore, thread }] of sections.entries()) {
    const at = `sections/${id}`
    if (i > 0) await page.getByRole('button', { name: 'Add a section at the blade end' }).click()
    await field(page, `${at}/length`).fill(length)
    await field(page, `${at}/outside/0/diameter`).fill(outside)
    if (bore !== undefined) await field(page, `${at}/bore/bore/diameter`).fill(bore)
    if (thread === undefined) continue
    await field(page, `${at}/bore/bore/kind`).selectOption('thread')
    await field(page, `${at}/bore/bore/thread`).fill(thread)
  }
}
