import { cautions } from '../../../job/cautions.ts'
import { choicesOf } from '../../../project/choice-words.ts'
import { boreThreadOf } from '../../../project/joint-thread.ts'
import { withRecord } from '../../../project/path.ts'
import { placeWords } from '../../../project/place-words.ts'
import type { JointInput } from '../../../project/schema/hilt.ts'
import { textOf } from '../../../project/typed-size.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { TickField } from '../../fields/tick-field.tsx'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useProject } from '../../work/work-context.ts'
import { newJoint } from './new-records.ts'
import { RecordCard, useEditAndGo } from './record-card.tsx'
import { ThreadField } from './thread-field.tsx'

const kinds = choicesOf('joints/kind')

/** How two sections hold together, and how far one reaches into the other. */
export function JointCard({ joint }: { readonly joint: JointInput }) {
  const path = `joints/${joint.id}`
  const project = useProject((p) => p)
  const { sections } = project
  const name = placeWords(project, path)
  const bore = joint.kind === 'threaded' ? boreThreadOf(project, joint) : undefined
  const thread = joint.thread ?? bore?.thread
  const engaged = textOf(joint.engagement)
  const options = sections.map((s) => ({ value: s.id, label: s.name ?? s.id }))
  return (
    <RecordCard
      path={path}
      group="sections"
      name={name}
      line={
        <span className="joint-line">
          {joint.name ?? 'joint'}, {kinds.find((k) => k.value === joint.kind)?.label}
          {thread ? ` ${thread}` : ''}
          {engaged === '' ? '' : `, engaged ${engaged}`}
        </span>
      }
    >
      <div className="fields-3">
        <PickField path={`${path}/kind`} label="Kind" options={kinds} />
        <PickField path={`${path}/rear`} label="Rear section" options={options} />
        <PickField path={`${path}/blade`} label="Blade-side section" options={options} />
        <SizeField path={`${path}/engagement`} label="Engaged by" optional placeholder="0" narrow />
        <SizeField path={`${path}/play`} label="Play sideways" optional measured={false} placeholder="none" narrow />
        {joint.kind === 'threaded' && (
          <ThreadField
            path={`${path}/thread`}
            said={bore && { thread: bore.thread, where: `the ${placeWords(project, bore.step)}` }}
          />
        )}
        <WordsField path={`${path}/name`} label="Name" placeholder="by its sections" />
      </div>
      <TickField path={`${path}/opens`} label="It opens" also />
      <TickField path={`${path}/wiresCross`} label="Wires may cross it" />
      {joint.kind === 'glued' && <p className="small caution">{cautions.glue}</p>}
    </RecordCard>
  )
}

/** Between two sections that no joint holds yet. */
export function AddJoint({ rear, blade }: { readonly rear: string; readonly blade: string }) {
  const go = useEditAndGo()
  const project = useProject((p) => p)
  const joint = newJoint(project, rear, blade)
  return (
    <button
      type="button"
      className="button button-plain add-joint"
      onClick={() => go((p) => withRecord(p, 'joints', joint), `joints/${joint.id}/engagement`)}
    >
      Add the joint
      <span className="unseen">
        {' '}
        of {placeWords(project, `sections/${rear}`)} and {placeWords(project, `sections/${blade}`)}
      </span>
    </button>
  )
}
