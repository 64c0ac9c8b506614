import './quick.css'
import { plausible } from '../../entry/plausible.ts'
import { partChoices } from '../../presets/choices.ts'
import { parseThread } from '../../rules/thread-designation.ts'
import { ChoiceField } from '../fields/choice-field.tsx'
import { LengthField } from '../fields/length-field.tsx'
import { TypedField } from '../fields/typed-field.tsx'
import type { FieldName } from './field-paths.ts'
import { FlatPartFields, RoundPartFields, type Said } from './part-fields.tsx'
import type { QuickForm } from './quick-form.ts'

export interface QuickFieldsProps {
  readonly form: QuickForm
  readonly onForm: (form: QuickForm) => void
  readonly said: Said
  /** Which field the hand is in: the drawing shows what it means. */
  readonly onField: (field: FieldName | undefined) => void
  /** Drawn on both sides of the hilt's two main sizes. */
  readonly sledHint: string | undefined
}

/** The one small form of the quick check. */
export function QuickFields({ form, onForm, said, onField, sledHint }: QuickFieldsProps) {
  const set = (change: Partial<QuickForm>) => onForm({ ...form, ...change })
  const watch = (field: FieldName) => (focused: boolean) => onField(focused ? field : undefined)
  const thread = parseThread(form.thread)
  const mouth = said.size('sections/tube/bore/mouth/diameter')
  return (
    <form className="quick-form" aria-label="Sizes" onSubmit={(event) => event.preventDefault()}>
      <fieldset>
        <legend>The hilt</legend>
        <p className="small soft">
          Type sizes as 33.2 or 33,2, 1 5/16", 33.2 ±0.05 or 33.1..33.4. The range below is what a calliper may be off,
          and a bore out of round, unless you type a ±.
        </p>
        <div className="field-row">
          <LengthField
            id="bore"
            label="Bore ⌀"
            text={form.bore}
            onText={(bore) => set({ bore })}
            usual={plausible.bore}
            placeholder="mm or in"
            fault={said.fault('bore')}
            question={said.question('bore')}
            size={said.size('sections/tube/bore/bore/diameter')}
            onFocusChange={watch('bore')}
          />
          <LengthField
            id="depth"
            label="Depth"
            text={form.depth}
            onText={(depth) => set({ depth })}
            usual={plausible.depth}
            placeholder="mm or in"
            fault={said.fault('depth')}
            question={said.question('depth')}
            size={said.size('sections/tube/length')}
            onFocusChange={watch('depth')}
          />
        </div>
        <div className="field-row">
          <TypedField
            id="thread"
            label="Thread at the mouth"
            text={form.thread}
            onText={(text) => set({ thread: text })}
            placeholder="none"
            fault={thread.ok ? said.fault('thread') : thread.problems[0]}
            question={said.question('thread')}
            echo={thread.ok ? (mouth ? `crests ${mouth.low.toFixed(2)} mm` : thread.value.name) : undefined}
            onFocusChange={watch('thread')}
          />
          <LengthField
            id="threadLength"
            label="Its length"
            text={form.threadLength}
            onText={(threadLength) => set({ threadLength })}
            placeholder="mm or in"
            disabled={form.thread.trim() === ''}
            fault={said.fault('threadLength')}
            question={said.question('threadLength')}
            onFocusChange={watch('threadLength')}
          />
        </div>
      </fieldset>
      <fieldset>
        <legend>What goes in</legend>
        <RoundPartFields
          name="cell"
          label="Cell"
          lengthLabel="Length"
          none="Choose a cell"
          part={form.cell}
          onPart={(cell) => set({ cell })}
          choices={partChoices.cell}
          said={said}
        />
        <RoundPartFields
          name="speaker"
          label="Speaker"
          lengthLabel="Depth"
          none="No speaker"
          part={form.speaker}
          onPart={(speaker) => set({ speaker })}
          choices={partChoices.speaker}
          said={said}
        />
        <FlatPartFields part={form.board} onPart={(board) => set({ board })} choices={partChoices.board} said={said} />
        <div className="field-row">
          <ChoiceField
            id="wires"
            label="Wires along the sled"
            value={String(form.wires)}
            onValue={(wires) => set({ wires: Number(wires) })}
            options={Array.from({ length: 15 }, (_, n) => ({ value: String(n), label: n === 0 ? 'None' : String(n) }))}
            note={form.wires > 0 ? '26 AWG, silicone' : undefined}
          />
          <LengthField
            id="sledDiameter"
            label="Sled ⌀"
            text={form.sledDiameter}
            onText={(sledDiameter) => set({ sledDiameter })}
            placeholder={sledHint ?? 'computed'}
            fault={said.fault('sledDiameter')}
            question={said.question('sledDiameter')}
          />
        </div>
      </fieldset>
    </form>
  )
}
