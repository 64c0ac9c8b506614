import { namesStates } from '../../project/names-states.ts'
import { useProject, useView, useWork } from '../work/work-context.ts'

/** Which moment of the hilt's life the drawings show, where they differ. All are judged in any case. */
export function StateChooser() {
  const { view, judged } = useWork()
  const state = useView((v) => v.state)
  const differs = useProject(namesStates)
  const states = judged.report?.states ?? []
  if (states.length < 2 || !differs) return undefined
  return (
    <label className="state-chooser">
      <span>Shown when</span>
      <select
        className="field-input"
        value={state ?? states[0]?.id}
        onChange={(event) => view.setState({ state: event.target.value })}
      >
        {states.map((s) => (
          <option key={s.id} value={s.id}>
            {s.name}
          </option>
        ))}
      </select>
    </label>
  )
}
