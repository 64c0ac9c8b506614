import buoyLantern from './buoy-lantern.json' with { type: 'json' }
import deckLantern from './deck-lantern.json' with { type: 'json' }
import ferryLantern from './ferry-lantern.json' with { type: 'json' }
import landingLantern from './landing-lantern.json' with { type: 'json' }
import pierLantern from './pier-lantern.json' with { type: 'json' }
import weirLantern from './weir-lantern.json' with { type: 'json' }

/** A project to try the program on: invented data, and said to be so in the file. */
export interface Demo {
  /** What it is asked for by: kebab-case. */
  readonly name: string
  readonly title: string
  /** As a project file holds it; read it like any other. */
  readonly project: unknown
}

/** In the order in which they are listed; the first is the one that `npm start` runs. */
export const demos: readonly Demo[] = [
  { name: 'pier-lantern', title: 'Everything goes in', project: pierLantern },
  { name: 'weir-lantern', title: 'A ring that does not come through the mouth', project: weirLantern },
  { name: 'landing-lantern', title: 'Cannot tell yet: a reading is missing', project: landingLantern },
  { name: 'deck-lantern', title: 'An off-centre cell under the board', project: deckLantern },
  {
    name: 'ferry-lantern',
    title: 'Five sections, a cradle that steps with the bore, in two pieces',
    project: ferryLantern,
  },
  { name: 'buoy-lantern', title: 'Two sleds: a slim body unit and a chamber of discs on rods', project: buoyLantern },
]
