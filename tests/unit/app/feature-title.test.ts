import { describe, expect, it } from 'vitest'
import { featureTitle } from '../../../src/app/steps/sled/feature-title.ts'
import { type FeatureKind, type FeatureList, featureKinds } from '../../../src/papers/sled-words.ts'
import { demo, projectOf } from '../job/demo-answer.ts'

const project = projectOf(demo('ferry-lantern'))
const titleOf = (list: FeatureList, record: Readonly<Record<string, unknown>>) =>
  featureTitle(project, featureKinds.find((k) => k.list === list) as FeatureKind, record)

describe('the title of a feature of a sled', () => {
  it('says what it is for, or where it sits', () => {
    expect(titleOf('windows', { id: 'switch', for: 'parts/switch' }).what).toBe('Window for push switch')
    expect(titleOf('channels', { id: 'wires', theta: 240 }).what).toBe('Wire channel at θ 240°')
    expect(titleOf('bulkheads', { id: 'wall', z: 196.8 }).what).toBe('Bulkhead at z 196.8')
    expect(titleOf('keys', { id: 'key', theta: -90, kind: 'keyway' }).what).toBe('Keyway at θ −90°')
    expect(titleOf('marks', { id: 'mark', text: 'R2', z: 40 }).what).toBe('Mark “R2”')
    expect(titleOf('discs', {}).what).toBe('Disc')
  })

  it('adds the word that findings know it by, where that says more', () => {
    expect(titleOf('rings', { id: 'front', z: 33 }).called).toBe('front')
    expect(titleOf('splits', { id: 'middle-joint', z: 142 }).called).toBe('middle joint')
    expect(titleOf('keys', { id: 'key-2', theta: 180 }).called).toBeUndefined()
    expect(titleOf('channels', { id: 'channel', theta: 90 }).called).toBeUndefined()
    expect(titleOf('windows', { id: 'switch', for: 'parts/switch' }).called).toBeUndefined()
  })
})
