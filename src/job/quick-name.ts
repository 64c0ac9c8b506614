import type { Presets } from '../presets/presets.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import type { QuickInput } from './quick.ts'

/** What a job grown from a quick check is called, so that it is found again among others: its cell and its bore. */
export function quickName({ cell, bore }: QuickInput, presets: Presets): string {
  const held =
    typeof cell === 'string'
      ? (presets.byId(cell)?.name ?? 'Cell')
      : `Cell ${plain(cell.diameter)} × ${inMm(cell.length)}`
  return `${held}, in a ${inMm(bore)} bore`
}

/** As typed; sizes of another form than a text or a number have no short name. */
const plain = (size: QuantityInput): string =>
  typeof size === 'string' || typeof size === 'number' ? String(size).trim() : '?'

/** A bare number says that it is millimetres. */
const inMm = (size: QuantityInput): string => plain(size).replace(/[\d.,]$/, '$& mm')
