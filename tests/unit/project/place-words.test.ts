import { describe, expect, it } from 'vitest'
import { demos } from '../../../src/job/demos/index.ts'
import { placeWords } from '../../../src/project/place-words.ts'
import { checkProject } from '../../../src/project/read.ts'
import type { Project } from '../../../src/project/schema/project.ts'

const projectOf = (name: string): Project => {
  const read = checkProject(demos.find((d) => d.name === name)?.project)
  if (!read.ok) throw new Error('a demo is sound')
  return read.value.project
}
const ferry = projectOf('ferry-lantern')
const pier = projectOf('pier-lantern')

describe('paths in the words of the project', () => {
  it.each([
    ['sections/body/bore/neck/diameter', 'diameter of the neck, body'],
    ['sections/body/neck', 'neck, body'],
    ['sections/body/bore/0/length', 'length of the mouth thread, body'],
    ['sections/body/bore/main/diameter/ovality', 'roundness of the main bore, body'],
    ['sections/body/bore/main/diameter/readings/1/value', 'reading 2 of the diameter of the main bore, body'],
    ['sections/pommel/bore/hollow/diameter', 'diameter of the hollow of the pommel'],
    ['sections/pommel/outside/1/diameter', 'diameter of the outside step 2, pommel'],
    ['sections/body/outside/0/diameter', 'outside diameter of the body'],
    ['sections/body/length', 'length of the body'],
    ['sections/body', 'body'],
    ['joints/pommel-body/engagement', 'engagement of the joint of pommel and body'],
    ['parts/cell/preset/diameter', 'diameter of the 18650 cell'],
    ['parts/cell/preset', '18650 cell'],
    ['parts/speaker/body/diameter', 'diameter of the 24 mm speaker'],
    ['parts/cell/at/z', 'place along z of the 18650 cell'],
    ['parts/switch/wireBend', 'bend of the wire of the push switch'],
    ['parts/spring/solid', 'fully pressed length of the rear spring'],
    ['parts/gone/at/across/r', 'distance from the axis of the part gone'],
    ['wires/harness/diameter', 'outside diameter of the harness'],
    ['printer/error', 'print error'],
    ['thresholds/clearance/value', 'setting "clearance"'],
    ['sections', 'sections'],
  ])('%s is "%s"', (path, words) => expect(placeWords(pier, path)).toBe(words))

  it('what stands on a board of a preset has no names here', () => {
    const project = { ...pier, parts: [{ id: 'board', kind: 'board' as const, preset: 'board-sound-medium' }] }
    expect(placeWords(project, 'parts/board/preset/components/1/height')).toBe('height of what stands on the board')
  })

  it.each([
    ['sections/rear/bore/bore/diameter', 'diameter of the rear bore, rear tube'],
    ['features/rivet/shape/reach', 'reach of the rivet of the clamp'],
    ['features/rivet/at/theta', 'clock angle of the rivet of the clamp'],
    ['features/slot/at/z', 'place along z of the key slot'],
    ['screws/retention/tip', 'radius of the tip of the retention screw'],
    ['sleds/main/splits/middle/pinDiameter', 'pin diameter of the split middle, sled'],
    ['sleds/main/nests/parts/cell/gap', 'gap of the nest of the 18650 cell'],
    ['sleds/main/nests/parts/board/lip', 'lip of the nest of the sound board'],
    ['sleds/main/windows/switch/gap', 'gap of the window for the push switch, sled'],
    ['sleds/main/keys/key/width', 'width of the key, sled'],
    ['sleds/main/windows', 'windows of the sled'],
    ['sleds/main/diameter', 'diameter of the sled'],
    ['sleds/main/from', 'rear end of the sled'],
    ['parts/board/body/components/1/height', 'height of the card socket, sound board'],
    ['parts/board/body/outline', 'outline of the sound board'],
    ['insertions/sled-in/through', 'mouth of the sled into the tube'],
    ['printer/bench/error', 'print error'],
  ])('%s is "%s"', (path, words) => expect(placeWords(ferry, path)).toBe(words))

  it('has no slash and no camel case in it for any field of any demo', () => {
    const paths: string[] = []
    const walk = (value: unknown, path: string): void => {
      if (path !== '') paths.push(path)
      if (value === null || typeof value !== 'object') return
      for (const [key, inner] of Object.entries(value)) {
        const id = (inner as { id?: string } | null)?.id
        walk(inner, path === '' ? key : `${path}/${Array.isArray(value) && id !== undefined ? id : key}`)
      }
    }
    for (const { lists } of [ferry, pier].map((p) => ({
      lists: { sections: p.sections, joints: p.joints, features: p.features, parts: p.parts, sleds: p.sleds },
    })))
      walk(lists, '')
    expect(paths.length).toBeGreaterThan(100)
    for (const path of paths)
      for (const p of [ferry, pier]) expect(placeWords(p, path)).not.toMatch(/\/|[a-z][A-Z]|undefined/)
  })
})
