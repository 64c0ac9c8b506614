import type { BoreStepInput, SectionInput } from '../project/schema/hilt.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { readingsOf, textOf } from '../project/typed-size.ts'
import type { Size } from './sizes.ts'

/** A section in one line of a table: what it is long and wide, as far as it is known. */
export interface SectionRow {
  readonly length: string
  readonly outside: string
  /** The tightest of its steps, and how many there are. */
  readonly bore: string
}

/** Nominal sizes in mm where the program knows them, else what was typed; a dash where nothing was. */
export function sectionRow(section: SectionInput, sizeAt: (path: string) => Size | undefined): SectionRow {
  const path = `sections/${section.id}`
  const told = (input: QuantityInput | undefined, at: string): string => {
    const size = sizeAt(at)
    return size && size.nominal > 0 ? short(size.nominal) : typed(input)
  }
  const outside = section.outside ?? []
  const widths = outside.map((o, i) => told(o.diameter, `${path}/outside/${i}/diameter`))
  return {
    length: told(section.length, `${path}/length`),
    outside: widths.length === 0 ? '–' : [...new Set(widths)].join(' / '),
    bore: boreOf(section.bore, (step, i) => {
      const at = `${path}/bore/${step.id ?? i}/diameter`
      const size = sizeAt(at)
      return { nominal: size?.nominal, text: told(step.diameter, at) }
    }),
  }
}

type Width = { readonly nominal: number | undefined; readonly text: string }

function boreOf(steps: readonly BoreStepInput[], widthOf: (step: BoreStepInput, i: number) => Width): string {
  const open = steps.map((step, i) => ({ step, ...widthOf(step, i) })).filter(({ step }) => step.kind !== 'solid')
  const [first] = open
  if (!first) return steps.length > 0 ? 'closed' : '–'
  if (steps.length === 1) return first.text
  const known = open.filter((w) => w.nominal !== undefined)
  const least = known.toSorted((a, b) => (a.nominal as number) - (b.nominal as number))[0]
  if (!least) return `${steps.length} steps`
  return `${least.text} in ${steps.length} steps`
}

function typed(input: QuantityInput | undefined): string {
  const text = textOf(input)
  const count = readingsOf(input).length
  return text === '' ? (count > 1 ? `${count} readings` : '–') : text
}

const short = (n: number): string => String(Number(n.toFixed(2)))
