import { nominalOf } from '../project/nominal.ts'
import { valueAt, withValue } from '../project/path.ts'
import { placeWords } from '../project/place-words.ts'
import type { ZPlaceInput } from '../project/schema/place.ts'
import type { Project } from '../project/schema/project.ts'
import { acrossAs, endHeight, heightAlone, measuredFrom, type PlaceOf } from './place-forms.ts'

/** Something in the project that names another thing, and what becomes of it when that thing is taken away. */
export interface Reference {
  /** What would change: the record, or its field. */
  readonly path: string
  /** In words: "place along z of the sound board is measured from it and becomes a number". */
  readonly words: string
}

interface Found extends Reference {
  readonly loosen: (project: Project, placeOf: PlaceOf) => Project | undefined
}

/** Everything that names a thing (`parts/cell`), so that nobody takes it away unawares. */
export const referencesTo = (project: Project, ref: string): Reference[] =>
  found(project, ref).map(({ path, words }) => ({ path, words }))

/**
 * The project without a thing. What was placed from it stays where it is, by numbers; what only served it (its nest,
 * its window, the ends of its wires, its own move) goes with it. Undefined where there is no such thing.
 */
export function withoutThing(project: Project, ref: string, placeOf: PlaceOf): Project | undefined {
  // From the last to the first, so that places in lists hold until they are gone themselves.
  const loose = found(project, ref).reduceRight((p, f) => f.loosen(p, placeOf) ?? p, project)
  return valueAt(project, ref) === undefined ? undefined : withValue(loose, ref, undefined)
}

function found(project: Project, ref: string): Found[] {
  return namings(project, '', ref).flatMap((path) => {
    const [own, field] = [path.slice(0, path.lastIndexOf('/')), path.slice(path.lastIndexOf('/') + 1)]
    const made = path.startsWith(`${ref}/`)
      ? undefined
      : kinds[/^\d+$/.test(field) ? 'item' : field]?.(project, own, ref)
    return made ? [made] : []
  })
}

type Kind = (project: Project, own: string, ref: string) => Found

/** By the field that names the thing; `own` is the path of the record that the field is in. */
const kinds: Readonly<Record<string, Kind>> = {
  of: (project, own, ref) =>
    own.startsWith('insertions/')
      ? whole(project, own.replace(/\/through$/, ''), 'goes through it')
      : {
          path: own,
          words: `${placeWords(project, own)} is measured from it and becomes a number`,
          loosen: (p, placeOf) => withValue(p, own, fixedHeight(valueAt(p, own) as ZPlaceInput, placeOf(ref))),
        },
  beside: (project, own) => ({
    path: own,
    words: `${placeWords(project, recordOf(own))} lies beside it and stays where it is, by its offsets`,
    loosen: (p, placeOf) => withValue(p, own, acrossAs('xy', placeOf(recordOf(own))?.across)),
  }),
  part: (project, own) =>
    own.endsWith('/presses')
      ? {
          path: own,
          words: `${placeWords(project, recordOf(own))} presses on it and will press on nothing`,
          loosen: (p, placeOf) => standing(p, recordOf(own), placeOf),
        }
      : whole(project, own, 'was typed for it'),
  for: (project, own) => whole(project, own, 'was made for it'),
  moves: (project, own) => whole(project, own, 'takes it in'),
  from: (project, own) => wireEnd(project, `${own}/from`, 'start'),
  to: (project, own) => wireEnd(project, `${own}/to`, 'end'),
  item: (project, own, ref) => ({
    path: own,
    words: `it is away in the state "${placeWords(project, recordOf(own))}"`,
    loosen: (p) =>
      withValue(
        p,
        own,
        (valueAt(p, own) as readonly string[]).filter((r) => r !== ref),
      ),
  }),
}

/** A record that has no meaning without the thing. */
const whole = (project: Project, path: string, why: string): Found => ({
  path,
  words: `${placeWords(project, path)} ${why} and goes too`,
  loosen: (p) => withValue(p, path, undefined),
})

const wireEnd = (project: Project, path: string, which: string): Found => ({
  path,
  words: `the ${which} of ${placeWords(project, recordOf(path))} is at it`,
  loosen: (p) => withValue(p, path, undefined),
})

function fixedHeight(z: ZPlaceInput, of: ReturnType<PlaceOf>): number | '' {
  const from = measuredFrom(z)
  if (!from || !of) return ''
  return heightAlone(endHeight(of, from.end ?? 'blade') + (nominalOf(from.by) ?? 0))
}

/** A contact that presses on nothing any more stays where it stood. */
function standing(project: Project, path: string, placeOf: PlaceOf): Project | undefined {
  const free = withValue(project, `${path}/presses`, undefined)
  const place = placeOf(path)
  return free && withValue(free, `${path}/at/z`, place ? heightAlone(place.rear) : '')
}

const recordOf = (path: string): string => path.split('/').slice(0, 2).join('/')

/** Paths of all fields whose value is the reference; records of lists by their ids, nests by their parts. */
function namings(at: unknown, path: string, ref: string): string[] {
  const below = (name: string) => (path === '' ? name : `${path}/${name}`)
  if (at === ref) return [path]
  if (Array.isArray(at))
    return at.flatMap((value: { id?: string; part?: string }, i) =>
      namings(value, below(value.id ?? (path.endsWith('/nests') ? value.part : undefined) ?? String(i)), ref),
    )
  if (at === null || typeof at !== 'object') return []
  return Object.entries(at).flatMap(([name, value]) => namings(value, below(name), ref))
}
