/** What we use of the package, which brings no types of its own. */
declare module '@jscadui/3mf-export' {
  interface MeshObject {
    readonly id: string
    readonly name: string
    readonly vertices: Float32Array
    readonly indices: Uint32Array
  }
  export function to3dmodel(model: {
    readonly meshes: readonly MeshObject[]
    readonly items: readonly { readonly objectID: string }[]
    /** Significant digits of a coordinate. */
    readonly precision: number
  }): string
  export const fileForContentTypes: { readonly name: string; readonly content: string }
  export class FileForRelThumbnail {
    readonly name: string
    readonly content: string
    add3dModel(path: string): void
  }
}
