import { parseLength } from '../../entry/entry.ts'
import { ChoiceField } from '../fields/choice-field.tsx'
import { TypedField } from '../fields/typed-field.tsx'
import type { Draft } from './draft.ts'
import { useChoices } from './use-choices.ts'

export interface KnownByProps {
  readonly path: string
  readonly draft: Draft
  readonly onDraft: (draft: Draft) => void
  readonly usual: string | undefined
}

/** Which tool read it, and the flats of its jaws; or that nobody did. */
export function KnownBy({ path, draft, onDraft, usual }: KnownByProps) {
  const tools = useChoices()?.tools ?? []
  const used = tools.find((t) => t.id === (draft.tool || usual))
  const usualName = tools.find((t) => t.id === usual)?.name
  const flat = parseLength(draft.flat, `${path}/jawFlat`)
  const chosen = draft.assumed ? 'assumed' : draft.tool
  const choose = (value: string) =>
    onDraft({ ...draft, assumed: value === 'assumed', tool: value === 'assumed' ? '' : value })
  return (
    <div className="readings-known">
      <ChoiceField
        id={`${path}/tool`}
        label="Known by"
        value={chosen}
        onValue={choose}
        options={[
          { value: '', label: usualName ? `the usual: ${usualName}` : 'the usual tool' },
          ...tools.filter((t) => t.id !== usual || draft.tool === usual).map((t) => ({ value: t.id, label: t.name })),
          ...(tools.some((t) => t.id === draft.tool) || draft.tool === ''
            ? []
            : [{ value: draft.tool, label: draft.tool }]),
          { value: 'assumed', label: 'assumed, not measured' },
        ]}
        note={draft.assumed ? 'No verdict that rests on it is clear.' : used && `${used.sizes}; ${used.known}`}
      />
      {(used?.jaws || draft.flat !== '') && !draft.assumed && (
        <TypedField
          id={`${path}/jawFlat`}
          label="Flat of the jaw tips"
          text={draft.flat}
          placeholder="mm"
          onText={(text) => onDraft({ ...draft, flat: text })}
          fault={flat.ok ? undefined : flat.problems[0]}
          echo="Inside jaws read short by it."
        />
      )}
    </div>
  )
}
