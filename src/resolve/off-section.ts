import { isRelative } from '../project/forms.ts'
import type { ZPlaceInput } from '../project/schema/place.ts'
import { add, type Quantity, scale } from '../quantity/quantity.ts'
import { ask, type Context } from './context.ts'
import type { Heights } from './heights.ts'
import type { Section } from './metal.ts'

/** The middle of what is in a wall may lie so far past the end of its section, mm: reading errors add up. */
const slack = 1

/**
 * Asks about features and screws whose middle is not where the section is that they are said to be in. They are taken
 * where they stand; there they often meet nothing, so that a slip would pass for a clear job.
 */
export function questionPlaces(ctx: Context, heights: Heights, sections: readonly Section[]): void {
  const question = (path: string, on: string, place: ZPlaceInput, z: Quantity | undefined): void => {
    const section = sections.find((s) => on === `sections/${s.id}`)
    if (!section || !z) return
    const [rear, blade] = [section.ends.rear.nominal, section.ends.blade.nominal]
    if (z.nominal >= rear - slack && z.nominal <= blade + slack) return
    ask(
      ctx,
      `${path}/at/z${isRelative(place) ? '/by' : ''}`,
      `z ${short(z.nominal)} mm`,
      `z ${short(rear)} to ${short(blade)} mm, where ${section.name} is`,
      'Is it in another section, or measured from elsewhere?',
    )
  }
  for (const f of ctx.project.features) {
    const ends = heights.ends(`features/${f.id}`, `features/${f.id}`)
    question(`features/${f.id}`, f.on, f.at.z, ends && scale(add(ends.rear, ends.blade), 0.5))
  }
  for (const s of ctx.project.screws)
    question(`screws/${s.id}`, s.on, s.at.z, heights.place(s.at.z, `screws/${s.id}/at/z`))
}

const short = (mm: number): string => String(Number(mm.toFixed(1)))
