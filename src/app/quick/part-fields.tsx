import { cellCaution } from '../../job/cell-caution.ts'
import type { Size } from '../../papers/sizes.ts'
import type { PartChoice } from '../../presets/choices.ts'
import type { Problem } from '../../problem/problem.ts'
import { ChoiceField } from '../fields/choice-field.tsx'
import { LengthField } from '../fields/length-field.tsx'
import type { FieldName } from './field-paths.ts'
import { type FlatPart, own, type RoundPart } from './quick-form.ts'

/** What the program said about the fields, by their names. */
export interface Said {
  readonly fault: (field: FieldName) => Problem | undefined
  readonly question: (field: FieldName) => Problem | undefined
  readonly size: (path: string) => Size | undefined
}

interface PartProps<P> {
  readonly part: P
  readonly onPart: (part: P) => void
  readonly choices: readonly PartChoice[]
  readonly said: Said
}

interface RoundProps extends PartProps<RoundPart> {
  readonly name: 'cell' | 'speaker'
  readonly label: string
  readonly lengthLabel: string
  /** What stands first in the list. */
  readonly none: string
}

/** A round part: from the list, or by its own two sizes. */
export function RoundPartFields({ name, label, lengthLabel, none, part, onPart, choices, said }: RoundProps) {
  return (
    <div>
      <PartChoiceField
        name={name}
        label={label}
        none={none}
        choices={choices}
        value={part.choice}
        onValue={(choice) => onPart({ ...part, choice })}
        said={said}
      />
      {part.choice === own && (
        <div className="field-row">
          <LengthField
            id={`${name}.diameter`}
            label={<Named part={label}>Diameter</Named>}
            text={part.diameter}
            onText={(diameter) => onPart({ ...part, diameter })}
            fault={said.fault(`${name}.diameter`)}
            question={said.question(`${name}.diameter`)}
            size={said.size(`parts/${name}/diameter`)}
          />
          <LengthField
            id={`${name}.length`}
            label={<Named part={label}>{lengthLabel}</Named>}
            text={part.length}
            onText={(length) => onPart({ ...part, length })}
            fault={said.fault(`${name}.length`)}
            question={said.question(`${name}.length`)}
            size={said.size(`parts/${name}/length`)}
          />
        </div>
      )}
      {name === 'cell' && part.choice !== '' && <p className="small caution">{cellCaution}</p>}
    </div>
  )
}

const flatSizes = [
  ['width', 'Width'],
  ['height', 'Height'],
  ['length', 'Length'],
] as const

/** A flat part: from the list, or by its own three sizes. */
export function FlatPartFields({ part, onPart, choices, said }: PartProps<FlatPart>) {
  return (
    <div>
      <PartChoiceField
        name="board"
        label="Board"
        none="No board"
        choices={choices}
        value={part.choice}
        onValue={(choice) => onPart({ ...part, choice })}
        said={said}
      />
      {part.choice === own && (
        <div className="field-row field-row-3">
          {flatSizes.map(([side, label]) => (
            <LengthField
              key={side}
              id={`board.${side}`}
              label={<Named part="Board">{label}</Named>}
              text={part[side]}
              onText={(text) => onPart({ ...part, [side]: text })}
              fault={said.fault(`board.${side}`)}
              question={said.question(`board.${side}`)}
              size={said.size(`parts/board/${side}`)}
              narrow
            />
          ))}
        </div>
      )}
    </div>
  )
}

/** "Diameter" to the eye, "Cell: diameter" to a screen reader that hears one field alone. */
function Named({ part, children }: { readonly part: string; readonly children: string }) {
  return (
    <>
      <span className="unseen">{part}: </span>
      {children}
    </>
  )
}

function PartChoiceField(props: {
  readonly name: 'cell' | 'speaker' | 'board'
  readonly label: string
  readonly none: string
  readonly choices: readonly PartChoice[]
  readonly value: string
  readonly onValue: (value: string) => void
  readonly said: Said
}) {
  const { name, label, none, choices, value, onValue, said } = props
  const chosen = choices.find((c) => c.id === value)
  return (
    <ChoiceField
      id={name}
      label={label}
      value={value}
      onValue={onValue}
      options={[
        { value: '', label: none },
        { value: own, label: 'Own sizes, measured' },
        ...choices.map((c) => ({ value: c.id, label: c.name })),
      ]}
      note={chosen && `${chosen.sizes}; ${chosen.known}`}
      fault={said.fault(name)?.hint}
      question={said.question(name)?.hint}
    />
  )
}
