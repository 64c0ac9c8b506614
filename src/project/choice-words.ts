/** What a field offers, by the value in the project, in the trade's words: the forms show them, and so does whatever tells of a job. */
type Words = Readonly<Record<string, string>>

export const fitWords = { press: 'press fit', snug: 'snug fit', slide: 'slide fit', free: 'free fit' } as const

const ends = { rear: 'rear end', middle: 'middle', blade: 'blade end' } as const
const openings = { open: 'open', closed: 'closed' } as const
const whenIn = { before: 'before the sled', after: 'after the sled' } as const

/** By the list that a record is in, and its field. */
export const choices = {
  'parts/kind': {
    cell: 'cell',
    contact: 'contact',
    board: 'board',
    speaker: 'speaker',
    switch: 'switch',
    port: 'port',
    connector: 'connector',
    other: 'other',
  },
  'parts/shape': {
    cylinder: 'round, along the hilt',
    radial: 'round, through the wall',
    box: 'box',
    outline: 'board outline',
    'ring-sector': 'piece of a ring',
  },
  'parts/held': {
    ...fitWords,
    cradle: 'by a cradle',
    screwed: 'screwed',
    glued: 'glued',
    pushed: 'pushed in',
  },
  'parts/goesIn': { 'with-sled': 'with the sled', ...whenIn },
  'parts/side': { top: 'top', bottom: 'bottom' },
  'features/kind': { intrusion: 'sticks in', slot: 'slot', hole: 'hole', window: 'window', recess: 'recess' },
  'features/form': { pin: 'pin', block: 'block', 'ring-sector': 'lip or ring', round: 'round', slot: 'slot' },
  'features/face': { rear: 'rear edge', middle: 'middle', blade: 'blade-side edge' },
  'features/fitted': whenIn,
  'screws/fitted': whenIn,
  'joints/kind': {
    threaded: 'threaded',
    clamped: 'clamped',
    slip: 'slip fit',
    bayonet: 'bayonet',
    glued: 'glued',
  },
  'sleeves/kind': {
    'grip-sleeve': 'grip sleeve',
    clamp: 'clamp band',
    ring: 'ring',
    strip: 'strip',
    cover: 'cover',
  },
  'sleeves/rearEnd': openings,
  'sleeves/bladeEnd': openings,
  'insertions/lateral': { floats: 'may shift to the wall', axis: 'kept on the axis' },
  'insertions/heading': { blade: 'towards the blade', rear: 'towards the rear' },
  'sections/kind': { plain: 'plain', threaded: 'thread', solid: 'closed end' },
  'sleds/construction': { 'full-cage': 'full cage', 'open-cradle': 'open cradle', 'discs-on-rods': 'discs on rods' },
  'sleds/outside': { straight: 'straight', throat: 'stepped', slim: 'slim with end rings' },
  'nests/style': { pocket: 'pocket', cradle: 'cradle with arms' },
  'nests/fit': fitWords,
  'seats/face': { rear: 'rear face', blade: 'blade face', around: 'outside, around' },
  'seats/fit': fitWords,
  'rings/face': ends,
  'keys/kind': { key: 'key', keyway: 'keyway' },
  'splits/joint': { pins: 'pins', dovetail: 'dovetail', plain: 'plain' },
} as const satisfies Readonly<Record<string, Words>>

/** A choice as a form lists it. */
export const choicesOf = (field: keyof typeof choices): { readonly value: string; readonly label: string }[] =>
  Object.entries(choices[field]).map(([value, label]) => ({ value, label }))

/** What holds where nothing was chosen and it is always the same. */
const usual: Readonly<Record<string, string>> = {
  'sleds/construction': 'full cage',
  'sleds/outside': 'straight',
  'nests/style': 'pocket',
  'keys/kind': 'key',
  'splits/joint': 'pins',
  'rings/face': 'rear end',
  'seats/face': 'blade face',
}

/** What the field at this path offers, and what it is called where nothing was chosen; undefined where it offers nothing. */
export function choicesAt(path: string): { readonly words: Words; readonly usual: string } | undefined {
  const [list, , inner, ...rest] = path.split('/')
  const field = path.split('/').at(-1)
  const key = `${list === 'sleds' && rest.length > 0 ? inner : list}/${field}`
  const words = (choices as Readonly<Record<string, Words>>)[key] ?? (field === 'face' ? ends : undefined)
  return words && { words, usual: usual[key] ?? 'as usual' }
}
