import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { frameOf } from '../../../src/app/drawing/frame.ts'
import { Ruler } from '../../../src/app/drawing/ruler.tsx'

describe('the z ruler', () => {
  it('has numbers that do not run into each other, on a phone as on a wide screen', () => {
    for (const width of [320, 390, 560, 820, 1280, 1920]) {
      const margin = { left: 40, right: 16, top: 30, bottom: 0 }
      const frame = frameOf({ z0: 0, z1: 275, reach: 20, width, margin, tallest: 1000, leastScale: 0 })
      const svg = renderToStaticMarkup(createElement(Ruler, { frame, z0: 0, z1: 275, y: 26 }))
      const xs = [...svg.matchAll(/<text x="([\d.]+)"/g)].map((m) => Number(m[1]))
      expect(xs.length).toBeGreaterThan(3)
      // Three figures take some 22 px.
      for (const [i, x] of xs.slice(1).entries()) expect(x - (xs[i] as number)).toBeGreaterThan(26)
    }
  })
})
