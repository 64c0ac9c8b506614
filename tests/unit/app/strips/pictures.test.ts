import { createElement, type ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { GapStrip } from '../../../../src/app/strips/gap-strip.tsx'
import { SectionStrip } from '../../../../src/app/strips/section-strip.tsx'
import { layoutOf } from '../../../../src/app/strips/strip-frame.ts'
import { UnrolledStrip } from '../../../../src/app/strips/unrolled-strip.tsx'
import { gapStripView } from '../../../../src/papers/gap-strip.ts'
import { lengthwiseView } from '../../../../src/papers/lengthwise.ts'
import { unrolledView } from '../../../../src/papers/unrolled.ts'
import { answerTo, demo } from '../../job/demo-answer.ts'

/** The strips of one demo, each as its picture in text: what changes in them shows as a line. */
const { assembly } = answerTo(demo('ferry-lantern'))
const view = lengthwiseView(assembly, 0)
const layout = layoutOf({
  whole: view,
  reach: view.reach,
  range: undefined,
  width: 1200,
  viewHeight: 900,
  dimensions: true,
  middle: 0,
})

function picture(strip: ReactNode): string {
  const svg = createElement('svg', { width: layout.width, height: layout.height }, strip)
  return `${renderToStaticMarkup(svg).replaceAll('><', '>\n<')}\n`
}

describe('the pictures of the strips', () => {
  it('lengthwise section with its dimension chains', async () => {
    const strip = createElement(SectionStrip, { view, layout, dimensions: true, lit: ['parts/cell'] })
    await expect(picture(strip)).toMatchFileSnapshot('pictures/ferry-section.svg')
  })

  it('least gap', async () => {
    const strip = createElement(GapStrip, { view: gapStripView(assembly), layout })
    await expect(picture(strip)).toMatchFileSnapshot('pictures/ferry-gap.svg')
  })

  it('a thread too fine for the scale is drawn by the line of its roots, not as a block', () => {
    const whole = { whole: view, reach: view.reach, range: undefined, viewHeight: 800, dimensions: false, middle: 0 }
    const edges = (width: number) => {
      const strip = createElement(GapStrip, { view: gapStripView(assembly), layout: layoutOf({ ...whole, width }) })
      const [, walls = ''] = /class="line-mid" d="([^"]*)"/.exec(picture(strip)) ?? []
      return { corners: walls.split('L').length, roots: picture(strip).includes('class="line-thin" d="M') }
    }
    expect(edges(1200)).toMatchObject({ roots: false })
    expect(edges(390)).toMatchObject({ roots: true })
    expect(edges(390).corners).toBeLessThan(edges(1200).corners / 3)
  })

  it('unrolled map', async () => {
    const map = unrolledView(assembly)
    const strip = createElement(UnrolledStrip, { view: map, layout, whole: map, lit: ['parts/switch'] })
    await expect(picture(strip)).toMatchFileSnapshot('pictures/ferry-unrolled.svg')
  })

  it('the map ends where the section above it is broken off', () => {
    const unrolled = unrolledView(assembly)
    const edge = (whole: { readonly z0: number; readonly z1: number }) => {
      const strip = createElement(UnrolledStrip, { view: unrolled, layout, whole, lit: [] })
      const rect = /class="unrolled-edge" x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/.exec(picture(strip))
      return { x: Number(rect?.[1]), width: Number(rect?.[2]) }
    }
    const { frame } = layout
    expect(edge({ z0: 40, z1: 200 })).toEqual({ x: frame.x(40), width: frame.x(200) - frame.x(40) })
    const whole = edge(unrolled)
    expect(whole.x).toBe(layout.left)
    expect(whole.x + whole.width).toBeCloseTo(frame.x(unrolled.z1), 6)
  })
})
