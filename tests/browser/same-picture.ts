import type { Page } from '@playwright/test'

/**
 * The share of pixels, 0 to 1, that a person would call different between two pictures (PNG) of one size; 1 where the
 * sizes differ. Edges may fall the other way on a new graphics context (some 3 in 100 pixels), so bytes and lengths say
 * nothing.
 */
export function unlike(page: Page, one: Buffer, other: Buffer): Promise<number> {
  return page.evaluate(
    async (pictures) => {
      const [a, b] = await Promise.all(
        pictures.map(async (text) => {
          const bytes = Uint8Array.from(atob(text), (c) => c.charCodeAt(0))
          const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
          const drawing = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')
          drawing?.drawImage(bitmap, 0, 0)
          return drawing?.getImageData(0, 0, bitmap.width, bitmap.height)
        }),
      )
      if (!a || !b || a.width !== b.width || a.height !== b.height) return 1
      let different = 0
      for (let i = 0; i < a.data.length; i += 4) {
        const step = [0, 1, 2].map((c) => Math.abs((a.data[i + c] ?? 0) - (b.data[i + c] ?? 0)))
        if (Math.max(...step) > 24) different += 1
      }
      return different / (a.width * a.height)
    },
    [one.toString('base64'), other.toString('base64')],
  )
}
