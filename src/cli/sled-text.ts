import type { BodyReport, Mass } from '../job/body-report.ts'
import type { OneSled } from '../job/sled-report.ts'
import { hanging } from './columns.ts'
import { plain, tenths } from './numbers.ts'

/** A printed body for a person: size and weight, how it lies and why, its thinnest wall. */
export function bodyLines(body: BodyReport, { material }: OneSled, width: number): string[] {
  const { min, max } = body.bounds
  const size = [0, 1, 2].map((i) => plain((max[i] as number) - (min[i] as number), 2)).join(' × ')
  const mass = body.mass && material ? [`${massText(body.mass)} solid in ${material.name}`] : []
  const closed = body.faults.length === 0 ? 'closed' : body.faults.join('; ')
  const facts = [`${size} mm`, `${plain(body.volume / 1000, 2)} cm³`, ...mass, `${body.triangles} triangles`, closed]
  return [
    ...hanging('  ', `${body.name || body.id}: ${facts.join(', ')}`, width),
    ...(body.orientation ? hanging('    ', body.orientation.why, width) : []),
    ...(body.thinnestWall ? hanging('    ', wallText(body.thinnestWall), width) : []),
  ]
}

function massText({ least, most }: Mass): string {
  const [a, b] = [least.toFixed(1), most.toFixed(1)]
  return a === b ? `${a} g` : `${a}–${b} g`
}

function wallText({
  thickness,
  facetError,
  limit,
  at,
  between: [a, b],
}: NonNullable<BodyReport['thinnestWall']>): string {
  const sides = a.nest === b.nest ? `within the ${a.nest}` : `between ${a.nest} and ${b.nest}`
  const place = `z ${tenths(at.z)}, θ ${at.theta.toFixed(0)}°, r ${tenths(at.r)}`
  const facets = thickness < limit && thickness + facetError >= limit ? `, less up to ${facetError} for facets` : ''
  return `Thinnest wall ${plain(thickness, 2)} mm (the process prints ${plain(limit, 2)}${facets}) at ${place}, ${sides}.`
}
