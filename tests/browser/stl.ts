import { readFile } from 'node:fs/promises'
import type { Download } from '@playwright/test'
import { expect } from './page.ts'

export interface Stl {
  readonly triangles: number
  /** Edges that are not met by exactly one other, the opposite way. */
  readonly open: number
  readonly size: readonly number[]
  readonly least: readonly number[]
  readonly volume: number
}

/** A binary STL read from its bytes alone, welded by position. */
export async function readStl(download: Download): Promise<Stl> {
  const bytes = await readFile(await download.path())
  const triangles = bytes.readUInt32LE(80)
  expect(bytes.length).toBe(84 + 50 * triangles)
  const edges = new Map<string, number>()
  const [least, most] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ]
  let volume = 0
  for (let t = 0; t < triangles; t++) {
    const corners = [0, 1, 2].map((c) => [0, 1, 2].map((k) => bytes.readFloatLE(84 + 50 * t + 12 * (c + 1) + 4 * k)))
    for (const corner of corners)
      for (const [k, v] of corner.entries()) {
        least[k] = Math.min(least[k] as number, v)
        most[k] = Math.max(most[k] as number, v)
      }
    const names = corners.map(String)
    for (const i of [0, 1, 2]) {
      const [a, b] = [names[i] as string, names[(i + 1) % 3] as string]
      edges.set(`${a}|${b}`, (edges.get(`${a}|${b}`) ?? 0) + 1)
    }
    const [p, q, r] = corners as [number[], number[], number[]]
    const [px, py, pz, qx, qy, qz, rx, ry, rz] = [...p, ...q, ...r] as number[] & { length: 9 }
    volume +=
      ((px as number) * ((qy as number) * (rz as number) - (qz as number) * (ry as number)) +
        (py as number) * ((qz as number) * (rx as number) - (qx as number) * (rz as number)) +
        (pz as number) * ((qx as number) * (ry as number) - (qy as number) * (rx as number))) /
      6
  }
  const lonely = [...edges].filter(([edge, n]) => n !== 1 || edges.get(edge.split('|').toReversed().join('|')) !== 1)
  return { triangles, open: lonely.length, size: most.map((m, k) => m - (least[k] as number)), least, volume }
}
