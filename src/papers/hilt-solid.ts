import { isThere } from '../body/there.ts'
import type { Assembly, Part } from '../resolve/assembly.ts'
import { planSled } from '../sled/plan-sled.ts'
import { type MetalLeaf, metalLeaves } from './metal-leaves.ts'
import { ridesOf } from './rides.ts'
import { roomOf, type SimpleSolid, simpleSolid } from './simple-solid.ts'
import { solidsOf } from './solid-contents.ts'

/** The hilt and all that lies in it in one state, as simple bodies; the printed sleds come from the kernel. */
export interface HiltSolid {
  readonly metal: readonly MetalLeaf[]
  readonly things: readonly Thing[]
}

/** Something in the hilt that is not printed: a part, a rod, a screw tip, a lip. */
export interface Thing {
  /** `parts/cell`, `screws/retention`, `sleds/main` for its rods. */
  readonly id: string
  readonly name: string
  readonly kind: Part['kind'] | 'intrusion' | 'rod'
  /** What it moves with: `sleds/main`, `sections/body`; itself where it goes in by its own way. */
  readonly rides: string
  readonly solids: readonly SimpleSolid[]
  readonly room: Room
}

/** From, to along the hilt, how far from the axis it reaches, and its middle, mm. */
export interface Room {
  readonly z0: number
  readonly z1: number
  readonly r: number
  readonly x: number
  readonly y: number
}

export function hiltSolid(assembly: Assembly, state = assembly.states[0]?.id ?? ''): HiltSolid {
  const gone = assembly.states.find((s) => s.id === state)?.without
  const parts = assembly.parts
    .filter((p) => !gone?.has(p.id))
    .map((p) => thing(p.id, p.name, p.kind, ridesOf(p), solidsOf(p)))
  const intrusions = assembly.intrusions
    .filter(({ body }) => isThere(body.states, state) && !gone?.has(body.of))
    .map(({ body, section }) => thing(body.of, body.name, 'intrusion', `sections/${section}`, [simpleSolid(body)]))
  const rods = assembly.sleds.flatMap((sled) =>
    planSled(assembly, sled).hardware.map((b) =>
      thing(`sleds/${sled.id}`, b.name, 'rod', `sleds/${sled.id}`, [simpleSolid(b)]),
    ),
  )
  return {
    metal: metalLeaves(assembly, state).filter((leaf) => !gone?.has(leaf.section)),
    things: [...parts, ...intrusions, ...rods].flatMap((t) => (t ? [t] : [])),
  }
}

function thing(
  id: string,
  name: string,
  kind: Thing['kind'],
  rides: string,
  pieces: readonly (SimpleSolid | undefined)[],
): Thing | undefined {
  const solids = pieces.flatMap((s) => (s ? [s] : []))
  if (solids.length === 0) return undefined
  const rooms = solids.map(roomOf)
  return {
    id,
    name,
    kind,
    rides,
    solids,
    room: {
      z0: Math.min(...rooms.map((r) => r.z0)),
      z1: Math.max(...rooms.map((r) => r.z1)),
      r: Math.max(...rooms.map((r) => r.r)),
      x: rooms.reduce((sum, r) => sum + r.x, 0) / rooms.length,
      y: rooms.reduce((sum, r) => sum + r.y, 0) / rooms.length,
    },
  }
}
