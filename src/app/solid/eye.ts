/** Where the eye stands. */
export interface Eye {
  /** Degrees: turned about the upright, raised above the level, and how near. */
  readonly turn: number
  readonly rise: number
  readonly zoom: number
}

/** The usual sides to look from. */
export const views: readonly (readonly [string, Pick<Eye, 'turn' | 'rise'>])[] = [
  ['Corner', { turn: -35, rise: 25 }],
  ['Side', { turn: 0, rise: 0 }],
  ['Rear', { turn: -90, rise: 0 }],
  ['Top', { turn: 0, rise: 90 }],
]

export const start: Eye = { turn: -35, rise: 25, zoom: 1 }
/** Degrees a key turns, and how far the eye may come. */
const step = 10
const zooms = { min: 0.6, max: 6 }

export const moved = (eye: Eye, turn: number, rise: number): Eye => ({
  ...eye,
  turn: eye.turn + turn,
  rise: Math.max(-90, Math.min(90, eye.rise + rise)),
})
export const nearer = (eye: Eye, by: number): Eye => ({
  ...eye,
  zoom: Math.max(zooms.min, Math.min(zooms.max, eye.zoom * by)),
})

/** A turn by one step: left, right, up or down as the eye goes. */
export const turns: readonly (readonly [string, string, (eye: Eye) => Eye])[] = [
  ['Turn left', '◂', (e) => moved(e, -step, 0)],
  ['Turn right', '▸', (e) => moved(e, step, 0)],
  ['Turn up', '▴', (e) => moved(e, 0, step)],
  ['Turn down', '▾', (e) => moved(e, 0, -step)],
]

/** What the keys do to the eye. */
export const keys: Readonly<Record<string, (eye: Eye) => Eye>> = {
  ArrowLeft: (e) => moved(e, -step, 0),
  ArrowRight: (e) => moved(e, step, 0),
  ArrowUp: (e) => moved(e, 0, step),
  ArrowDown: (e) => moved(e, 0, -step),
  '+': (e) => nearer(e, 1.2),
  '=': (e) => nearer(e, 1.2),
  '-': (e) => nearer(e, 1 / 1.2),
}
