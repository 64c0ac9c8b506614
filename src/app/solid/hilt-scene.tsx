import { type ReactNode, useMemo } from 'react'
import { Plane, Vector3 } from 'three'
import type { Thing } from '../../papers/hilt-solid.ts'
import type { MetalLeaf } from '../../papers/metal-leaves.ts'
import type { JobSolids } from '../../worker/job-solids.ts'
import type { WallHole } from '../../worker/wall-holes.ts'
import { CutFace } from './cut-face.tsx'
import { lying } from './geometry.ts'
import { useInks } from './inks.ts'
import { LeafPiece } from './leaf-piece.tsx'
import { type Mark, MarkPiece } from './mark-piece.tsx'
import { isLit, isThingLit, type Picked } from './picked.ts'
import { keyOf, type Placed } from './placing.ts'
import { PrintedPiece } from './printed-piece.tsx'
import { ThingPiece } from './thing-piece.tsx'

/** How the metal is shown. */
export type MetalShown = 'open' | 'whole' | 'away'

export interface HiltSceneProps {
  readonly solids: JobSolids
  readonly where: readonly Placed[]
  /** The clock angle that lies up, degrees: that of the lengthwise section. */
  readonly theta: number
  readonly metal: MetalShown
  readonly contents: boolean
  readonly sledCut: boolean
  readonly theme: string
  readonly picked: Picked | undefined
  /** Path that is lit elsewhere on the page. */
  readonly lit: string | undefined
  readonly marks: readonly Mark[]
}

/** The wedge that is cut out of the metal, from the angle of the section, degrees. */
const wedge = 140

/** The hilt as it lies: z to the right, the angle of the section up, the wedge that is cut out towards the eye. */
export function HiltScene(props: HiltSceneProps) {
  const { solids, where, theta, metal, contents, sledCut, theme, picked, lit, marks } = props
  const inks = useInks(theme)
  const places = useMemo(() => new Map(where.map((p) => [p.key, p.offset])), [where])
  const planes = useMemo(() => (sledCut ? [new Plane(new Vector3(0, 0, -1), 0)] : []), [sledCut])
  const [from, to] = metal === 'whole' ? [0, 360] : [theta + wedge, theta + 360]
  const at = (place: string, child: ReactNode, key = place) => {
    const offset = places.get(place)
    return offset ? (
      <group key={key} position={[...offset]}>
        <group matrix={lying} matrixAutoUpdate={false}>
          <group rotation={[0, 0, (-theta * Math.PI) / 180]}>{child}</group>
        </group>
      </group>
    ) : undefined
  }
  // Each body is counted and then cut before the next is counted.
  const bodies = solids.sleds.flatMap((s) => s.bodies.map((b) => b.id))
  const orderOf = (id: string) => 1 + bodies.indexOf(id)
  const sections = useMemo(() => bySection(solids.hilt.metal), [solids])
  const holes = useMemo(
    () => new Map(sections.map(([id]) => [id, solids.holes.filter((h) => h.section === id)])),
    [sections, solids],
  )
  return (
    <>
      <ambientLight intensity={2.1} />
      <directionalLight position={[-60, 120, 160]} intensity={1.3} />
      {metal !== 'away' &&
        sections.map(([id, leaves]) =>
          at(
            id,
            leaves.map((leaf, i) => (
              // The leaves of a section have no name but their place in it.
              // oxlint-disable-next-line react/no-array-index-key
              <LeafPiece
                key={i}
                leaf={leaf}
                holes={holes.get(id) ?? none}
                from={from}
                to={to}
                inks={inks}
                lit={isThingLit(id, picked, lit)}
              />
            )),
          ),
        )}
      {solids.sleds.flatMap((sled) =>
        sled.bodies.map((body) =>
          at(
            body.id,
            <PrintedPiece
              sled={sled.id}
              body={body}
              inks={inks}
              planes={planes}
              isLit={(maker) => isLit(maker, sled.id, picked, lit)}
              order={orderOf(body.id)}
            />,
          ),
        ),
      )}
      {sledCut &&
        solids.sleds.flatMap((sled) =>
          sled.bodies.map((b) => places.has(b.id) && <CutFace key={b.id} inks={inks} order={orderOf(b.id) + 0.5} />),
        )}
      {solids.hilt.things
        .filter((t) => (inSled(t) ? contents : metal !== 'away'))
        .map((t) => at(keyOf(t), <ThingPiece thing={t} inks={inks} lit={isThingLit(t.id, picked, lit)} />))}
      {marks.map((m) => at(m.on, <MarkPiece mark={m} colour={inks[m.tone]} />, `mark ${m.key}`))}
    </>
  )
}

const none: readonly WallHole[] = []

const inSled = (t: Thing): boolean => t.rides.startsWith('sleds/')

function bySection(leaves: readonly MetalLeaf[]): [string, MetalLeaf[]][] {
  const found = new Map<string, MetalLeaf[]>()
  for (const leaf of leaves) found.set(leaf.section, [...(found.get(leaf.section) ?? []), leaf])
  return [...found]
}
