import type { Body } from '../body/body.ts'
import type { Problem } from '../problem/problem.ts'
import type { PartInput } from '../project/schema/part.ts'
import type { Project } from '../project/schema/project.ts'
import type { SledInput } from '../project/schema/sled.ts'
import type { Quantity } from '../quantity/quantity.ts'
import type { Across } from './across.ts'
import type { Missing } from './context.ts'
import type { Cover, RoundHole } from './covers.ts'
import type { Extent } from './extent.ts'
import type { WallOpening } from './features.ts'
import type { Ends } from './heights.ts'
import type { Intrusion, Section } from './metal.ts'
import type { Thresholds } from './thresholds.ts'

/**
 * The project with every dimension known as an interval, in the frame of one hilt: what all checks, the sled, the
 * drawings and the papers are made from. Nothing in it depends on the browser, on files or on the time of day.
 */
export interface Assembly {
  readonly hilt: { readonly id: string; readonly name: string }
  readonly sections: readonly Section[]
  /** Bore walls, slots cut out, as bodies. */
  readonly bores: readonly BoreBody[]
  readonly openings: readonly WallOpening[]
  /** Round holes in the wall, and covers over it: what the drawings show and the clearance checks leave alone. */
  readonly roundHoles: readonly RoundHole[]
  readonly covers: readonly Cover[]
  readonly intrusions: readonly Intrusion[]
  readonly parts: readonly Part[]
  readonly sleds: readonly Sled[]
  readonly insertions: readonly Insertion[]
  readonly states: readonly State[]
  readonly wires: readonly Bundle[]
  readonly thresholds: Thresholds
  /** What was typed: names for places, and the fields that a fix changes. */
  readonly project: Project
  /** Entries that look like a slip: questions to the person, not refusals. */
  readonly questions: readonly Problem[]
  readonly missing: readonly Missing[]
  /** Choices nobody made, in words. */
  readonly assumptions: readonly string[]
}

export interface BoreBody {
  readonly body: Body
  readonly section: string
  /** The step it is part of: `sections/body/neck`. */
  readonly step: string
  readonly solid: boolean
}

export interface Part {
  /** `parts/cell`. */
  readonly id: string
  readonly name: string
  readonly kind: PartInput['kind']
  readonly input: PartInput
  /** Ids without their list: the sled it sits on, or the section. */
  readonly sled: string | undefined
  readonly section: string | undefined
  readonly goesIn: 'before' | 'with-sled' | 'after'
  readonly ends: Ends
  readonly across: Across
  readonly extent: Extent
  readonly bodies: readonly Body[]
  readonly contact: Contact | undefined
}

export interface Contact {
  readonly presses: string
  readonly end: 'rear' | 'blade'
  readonly solid: Quantity | undefined
  readonly free: Quantity | undefined
  readonly preload: Quantity | undefined
  /** The face it stands on. */
  readonly base: Quantity
}

/** A sled's frame and outside; its nests are planned in `src/sled`. */
export interface Sled {
  readonly id: string
  readonly name: string
  readonly input: SledInput
  /** Where it is drawn; exact. */
  readonly ends: Ends
  /** How far from there it truly lies along the hilt. */
  readonly shift: Quantity
  /** Body pieces from the rear, each with its own radius; drawn numbers, mm. */
  readonly pieces: readonly SledPiece[]
  readonly rings: readonly SledRing[]
  readonly print: PrintProcess
  /** How far it may be off its clock angle, either way, degrees. */
  readonly clocking: number | undefined
  /** How far it can shift sideways at most, where that was typed, mm. */
  readonly float: number | undefined
  /** Heights typed inside the sled, by path (`sleds/main/splits/a/z`): drawn numbers. */
  readonly drawn: ReadonlyMap<string, number>
}

export interface SledPiece {
  readonly z0: number
  readonly z1: number
  readonly radius: number
  readonly how: 'typed' | 'default' | 'derived'
  readonly path: string
  readonly source: string
  /** The bore that makes it as wide as it is, where no width was typed. */
  readonly by?: string
}

export interface SledRing {
  readonly id: string
  readonly z0: number
  readonly z1: number
  readonly radius: number
}

/** What the printer does: numbers with their sources. */
export interface PrintProcess {
  readonly id: string
  readonly name: string
  /** How far a printed face may stand out from where it was drawn: nominal 0. */
  readonly error: Quantity
  readonly holeShrink: number
  readonly leastWall: number
  readonly leastWallSource: string
  readonly bead: number | undefined
  /** Diametral gap between a part and its pocket as printed, by fit class. */
  readonly fit: Readonly<
    Record<
      'press' | 'snug' | 'slide' | 'free',
      { readonly min: number; readonly max: number; readonly nominal: number }
    >
  >
  readonly source: string
  /** What it prints with; undefined where the project does not say. */
  readonly material: PrintMaterial | undefined
}

export interface PrintMaterial {
  readonly id: string
  readonly name: string
  /** Where it is named in the project. */
  readonly path: string
  /** g/cm³; undefined where its preset does not know it. */
  readonly density: { readonly min: number; readonly max: number } | undefined
  readonly source: string
}

export interface Insertion {
  readonly id: string
  readonly name: string
  readonly path: string
  /** What moves: `sleds/main`, `parts/plug`, `sections/tube`. */
  readonly moves: string
  /** Height of the mouth, mm (nominal), and the section it belongs to. */
  readonly opening: number
  readonly section: string
  readonly heading: 'blade' | 'rear'
  readonly lateral: 'axis' | 'floats'
  /** The state it happens in, where one is named. */
  readonly during: string | undefined
  /** Earlier moves than this one: what they brought is there. */
  readonly order: number
  /** Sections that earlier moves have put on, also outside the mouth: `sections/cap`. */
  readonly after: readonly string[]
  readonly assumed: boolean
}

export interface State {
  readonly id: string
  readonly name: string
  /** References of what is not there. */
  readonly without: ReadonlySet<string>
}

export interface Bundle {
  readonly id: string
  readonly name: string
  readonly sled: string | undefined
  readonly diameter: Quantity
  readonly count: number
}
