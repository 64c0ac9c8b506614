import { buildBody, type Kernel } from '../../../geometry/kernel/manifold.ts'
import { leastFacets } from '../../../geometry/plan/facets.ts'
import type { PlanBody } from '../../../geometry/plan/plan.ts'
import { facetBound, sagitta, widened } from './facet-bound.ts'
import { jscadBody } from './jscad-body.ts'
import { type Measured, measureMesh } from './measured.ts'
import { type OpenCascade, openCascadeBody, type Way } from './opencascade-body.ts'

/** Facets of a second, finer build, at which next to nothing may be lost to them. */
const fine = 2 * leastFacets
/** Corners rounded to float32 and integrals of curved faces, mm³: about 0.004 is seen in a sled of 50 000. */
const noise = 0.05
/** JSCAD drops crumbs where planes all but meet: a share of the volume (3e-6 at seed 364, a hundredth of it as a rule). */
const jscadNoise = 1e-5
/** Two kernels with the same polygons, mm. */
const sameCorner = 1e-4
/** An extreme that is the end of an arc, up to 60° off the axis it is extreme along, moves by up to twice the sagitta. */
const obliquely = 2

export interface Kernels {
  readonly kernel: Kernel
  readonly oc: OpenCascade
}

/**
 * What two other kernels say of a body, where it is not what the product made of it: empty where all agree. `asked` is
 * the plan they read, where it shall be another one. OpenCascade's cut by a list is wrong without a word about once in
 * five hundred plans (seed 324 loses 2770 mm³), so where it objects it is asked again, cut by cut, and that counts.
 */
export function disagreements(kernels: Kernels, body: PlanBody, asked = body): string[] {
  const own = { coarse: made(kernels.kernel, body, leastFacets), finer: made(kernels.kernel, body, fine) }
  const polygons = samePolygons(own.coarse, jscadBody(asked, leastFacets))
  const round = truly(kernels.oc, asked, own, 'list')
  return [...polygons, ...(round.length > 0 ? truly(kernels.oc, asked, own, 'chain') : [])]
}

interface Own {
  readonly coarse: Made
  readonly finer: Made
}

type Made = Measured & { readonly pieces: number }

function truly(oc: OpenCascade, asked: PlanBody, own: Own, way: Way): string[] {
  const exact = openCascadeBody(oc, asked, way)
  return [
    ...withinFacets(asked, own.coarse, exact, leastFacets),
    ...withinFacets(asked, own.finer, exact, fine),
    ...sameCount(own.coarse, exact, () => openCascadeBody(oc, widened(asked, leastFacets), way)),
  ]
}

/**
 * Pieces as many as with true rounds; or as many as with cutters as wide as the corners of their polygons, where such a
 * corner goes through a wall that is thinner than a facet is deep.
 */
function sameCount(own: Made, exact: Measured, wide: () => Measured): string[] {
  const found = samePieces('OpenCascade', own, exact)
  return found.length > 0 && samePieces('OpenCascade', own, wide()).length > 0 ? found : []
}

function made(kernel: Kernel, body: PlanBody, facets: number): Made {
  const built = buildBody(kernel, body, facets)
  if (!built.ok) throw new Error(`no solid: ${JSON.stringify(built.faults)}`)
  return { ...measureMesh(built.mesh), pieces: built.pieces }
}

/** JSCAD has the same polygons, so it must come to the same body but for rounding. */
function samePolygons(own: Made, other: Measured): string[] {
  const room = Math.max(noise, jscadNoise * own.volume)
  const volume = off('JSCAD: volume', own.volume - other.volume, -room, room)
  const box = axes((k) => [
    ...off(`JSCAD: least ${'xyz'[k]}`, own.min[k] - other.min[k], -sameCorner, sameCorner),
    ...off(`JSCAD: most ${'xyz'[k]}`, own.max[k] - other.max[k], -sameCorner, sameCorner),
  ])
  return [...volume, ...box, ...samePieces('JSCAD', own, other)]
}

/** OpenCascade has true rounds, so its body is the larger one, but by no more than facets can take. */
function withinFacets(body: PlanBody, own: Measured, exact: Measured, least: number): string[] {
  const name = `OpenCascade at ${least} facets`
  const bound = facetBound(body, exact.min[2], exact.max[2], least)
  const depth = obliquely * sagitta(body, least) + sameCorner
  const box = axes((k) => [
    ...off(`${name}: least ${'xyz'[k]}`, own.min[k] - exact.min[k], -sameCorner, depth),
    ...off(`${name}: most ${'xyz'[k]}`, exact.max[k] - own.max[k], -sameCorner, depth),
  ])
  return [...off(`${name}: volume`, exact.volume - own.volume, -noise, bound + noise), ...box]
}

const axes = (f: (k: 0 | 1 | 2) => string[]): string[] => ([0, 1, 2] as const).flatMap(f)

const samePieces = (name: string, own: Made, other: Measured): string[] => [
  ...off(`${name}: solids`, own.solids - other.solids, 0, 0),
  ...off(`${name}: hollows`, own.hollows - other.hollows, 0, 0),
  ...off(`${name}: pieces as the kernel counts them`, own.pieces - other.solids - other.hollows, 0, 0),
]

/** A difference that is not between two limits, in words. */
function off(what: string, difference: number, lo: number, hi: number): string[] {
  return difference >= lo && difference <= hi ? [] : [`${what} off by ${difference}, allowed ${lo} to ${hi}`]
}
