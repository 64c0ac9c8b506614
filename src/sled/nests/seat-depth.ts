import type { Part } from '../../resolve/assembly.ts'
import type { SledJob } from '../job.ts'

/** A spring's seat holds its first turns, mm: common practice, no source. */
const usualSeat = 1.2

/**
 * How much deeper than the cell's pocket a round contact stands, so that it stays in its place: at most half of what
 * is left of it when the cell has pressed it solid.
 */
export function seatDepth(job: SledJob, contact: Part): number {
  if (!contact.extent.round || !contact.contact) return 0
  const typed = job.sled.input.nests?.find((n) => n.part === contact.id)?.seat
  return typed ?? Math.min(usualSeat, (contact.contact.solid?.nominal ?? 2) / 2)
}
