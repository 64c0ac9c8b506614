import type { FaceMaker } from '../../worker/job-solids.ts'

/** What was clicked or chosen from the list. */
export type Picked =
  /** A face of a sled, or, without its maker, all faces of one nest. */
  | {
      readonly kind: 'face'
      readonly sled: string
      readonly nest: string
      readonly by: string
      readonly maker?: FaceMaker
    }
  /** A part, a section, a screw: by its reference. */
  | { readonly kind: 'thing'; readonly id: string; readonly name: string }

/** Whether a face is a piece of what is picked, or was made by the dimension or part that is lit elsewhere on the page. */
export function isLit(maker: FaceMaker, sled: string, picked: Picked | undefined, lit: string | undefined): boolean {
  if (picked?.kind === 'face')
    return picked.maker
      ? picked.maker === maker
      : picked.sled === sled && picked.nest === maker.nest && picked.by === maker.by
  if (picked || lit === undefined) return false
  return maker.by === lit || maker.dimensions.some((d) => d.path === lit)
}

/** Whether a thing is what is picked, or holds the field that is lit. */
export const isThingLit = (id: string, picked: Picked | undefined, lit: string | undefined): boolean =>
  picked ? picked.kind === 'thing' && picked.id === id : lit !== undefined && (lit === id || lit.startsWith(`${id}/`))
