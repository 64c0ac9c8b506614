import type { SledInput } from '../../../project/schema/sled.ts'
import { PathRow } from '../../dimensions/path-row.tsx'

/** How far the sled may be off its place: sideways and turned. */
export function Turning({ sled }: { readonly sled: SledInput }) {
  return (
    <div className="dim-rows">
      <PathRow
        path={`sleds/${sled.id}/float`}
        name="float, sideways"
        unit="mm"
        keeps="text"
        known={undefined}
        unknown="computed from its clearance"
      />
      <PathRow
        path={`sleds/${sled.id}/clocking`}
        name="turned off its place"
        unit="°"
        keeps="text"
        known={undefined}
        unknown="not at all"
      />
    </div>
  )
}
