import './measure.css'
import { useEffect } from 'react'
import { cautions } from '../../../job/cautions.ts'
import { focusPath } from '../../fields/focus-path.ts'
import { useProject, useWork } from '../../work/work-context.ts'
import { DatumSketch } from './datum-sketch.tsx'
import { FeatureCard } from './feature-card.tsx'
import { HiltNames } from './hilt-names.tsx'
import { newIntrusion, newOpening, newScrew, newSleeve } from './new-records.ts'
import { RecordGroup } from './record-group.tsx'
import { ScrewCard } from './screw-card.tsx'
import { SectionList } from './section-list.tsx'
import { SleeveCard } from './sleeve-card.tsx'

/** The hilt as measured: its sections and bores, and what is in, through and over its walls. */
export default function MeasureStep() {
  const { features, screws, sleeves } = useProject((p) => p)
  const cut = features.some((f) => f.kind !== 'intrusion') || screws.length > 0
  useFirstField()
  return (
    <div className="measure">
      <p className="small soft">
        Type sizes as 25.4 or 25,4, as 1 1/2", as 25.4 ±0.05 or as 25.3..25.5. Heights z run from the rear of the hilt,
        angles θ from the main switch line, clockwise as seen from the rear.
      </p>
      <HiltNames />
      <DatumSketch />
      <SectionList />
      <RecordGroup
        list="features"
        title="In the walls: openings, and what sticks in"
        caution={cut ? cautions.drilling : undefined}
        adding={[
          { words: 'Add what sticks in', make: newIntrusion, first: 'at/z/by' },
          { words: 'Add an opening', make: newOpening, first: 'at/z/by' },
        ]}
      >
        {features.map((f) => (
          <FeatureCard key={f.id} feature={f} />
        ))}
      </RecordGroup>
      <RecordGroup
        list="screws"
        title="Retention screws"
        adding={[{ words: 'Add a screw', make: newScrew, first: 'thread' }]}
      >
        {screws.map((s) => (
          <ScrewCard key={s.id} screw={s} />
        ))}
      </RecordGroup>
      <RecordGroup
        list="sleeves"
        title="Sleeves and covers"
        adding={[{ words: 'Add a sleeve', make: newSleeve, first: 'z/by' }]}
      >
        {sleeves.map((s) => (
          <SleeveCard key={s.id} sleeve={s} />
        ))}
      </RecordGroup>
    </div>
  )
}

/** A job with nothing measured begins in its first field. */
function useFirstField() {
  const { job } = useWork()
  useEffect(() => {
    const [first] = job.get().sections
    if (first?.length === '' && document.activeElement === document.body) focusPath(`sections/${first.id}/length`)
  }, [job])
}
