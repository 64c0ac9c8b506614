import { capital } from '../sheet/numbers.ts'
import { DimensionTable } from './dimension-table.tsx'
import type { Picked } from './picked.ts'

export interface PickedNoteProps {
  readonly picked: Picked | undefined
  readonly nameOf: (reference: string) => string
  readonly onField: (path: string) => void
  readonly onClose: () => void
}

/** What was clicked: of a face its nest, the part it is for, and the dimensions that made it. */
export function PickedNote({ picked, nameOf, onField, onClose }: PickedNoteProps) {
  return (
    <div className="picked-note" aria-live="polite">
      {picked ? (
        <>
          <div className="picked-head">
            <b>{titleOf(picked, nameOf)}</b>
            {picked.kind === 'thing' && (
              <button type="button" className="button button-plain" onClick={() => onField(picked.id)}>
                Go to its fields
              </button>
            )}
            <button type="button" className="button button-plain" onClick={onClose}>
              Let go
            </button>
          </div>
          {picked.kind === 'face' && picked.maker && (
            <DimensionTable dimensions={picked.maker.dimensions} onField={onField} />
          )}
        </>
      ) : (
        <p className="small soft">Click a face to see what made it.</p>
      )}
    </div>
  )
}

function titleOf(picked: Picked, nameOf: PickedNoteProps['nameOf']): string {
  if (picked.kind === 'thing') return capital(picked.name)
  const whose = nameOf(picked.by)
  return picked.by === picked.sled ? `${capital(picked.nest)} of ${whose}` : `${capital(picked.nest)} for ${whose}`
}
