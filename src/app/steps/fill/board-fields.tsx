import { useState } from 'react'
import { cornersText, parseCorners } from '../../../entry/corners.ts'
import { choicesOf } from '../../../project/choice-words.ts'
import type { BodyInput, ComponentInput } from '../../../project/schema/part.ts'
import { PickField } from '../../fields/pick-field.tsx'
import { TypedField } from '../../fields/typed-field.tsx'
import { useSaid } from '../../fields/use-said.ts'
import { WordsField } from '../../fields/words-field.tsx'
import { SizeField } from '../../readings/size-field.tsx'
import { useSetValue } from '../../work/work-context.ts'
import type { PartInHand } from './use-part.ts'

type Outline = Extract<BodyInput, { shape: 'outline' }>

/** The edge of a board, and what stands on it. */
export function BoardFields({ hand, body }: { readonly hand: PartInHand; readonly body: Outline }) {
  const set = useSetValue()
  const path = `${hand.path}/body/components`
  const components = body.components ?? []
  const put = (next: readonly ComponentInput[]) => set(path, next.length > 0 ? next : undefined)
  return (
    <>
      <CornersField path={`${hand.path}/body/outline`} corners={body.outline} />
      <ol className="fill-components">
        {components.map((c, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a component has no name of its own but its place in the list
          <li key={i}>
            <ComponentFields path={`${path}/${i}`} />
            <button
              type="button"
              className="button fill-button"
              onClick={() => put(components.filter((_, n) => n !== i))}
            >
              Remove<span className="unseen"> {c.name ?? `component ${i + 1}`}</span>
            </button>
          </li>
        ))}
      </ol>
      <button
        type="button"
        className="button fill-button"
        onClick={() =>
          put([...components, { z: '0', x: '0', length: '', width: '', height: '', side: 'top' } as ComponentInput])
        }
      >
        Add what stands on the board
      </button>
    </>
  )
}

/** Numbers without a spread: what is typed is kept here until it reads as an outline. */
function CornersField({ path, corners }: { readonly path: string; readonly corners: Outline['outline'] }) {
  const set = useSetValue()
  const said = useSaid()
  const [draft, setDraft] = useState<string>()
  const text = draft ?? cornersText(corners)
  const read = parseCorners(text, path)
  return (
    <TypedField
      id={path}
      label="Outline: length x width, or corners z x; z x; …"
      text={text}
      onText={(next) => {
        const now = parseCorners(next, path)
        setDraft(next)
        if (now.ok) set(path, now.value)
      }}
      fault={read.ok ? said.fault(path) : read.problems[0]}
      echo={read.ok ? `${read.value.length} corners; z from its rear edge, x from its middle` : undefined}
      onFocusChange={(focused) => {
        if (!focused && read.ok) setDraft(undefined)
      }}
    />
  )
}

const sizes = [
  ['z', 'z from its rear edge'],
  ['x', 'x from its middle'],
  ['length', 'Length, along'],
  ['width', 'Width, across'],
  ['height', 'Height over the board'],
] as const

function ComponentFields({ path }: { readonly path: string }) {
  return (
    <div className="fill-fields">
      <WordsField path={`${path}/name`} label="On the board" placeholder="component" />
      <PickField path={`${path}/side`} label="Side" none="top (usual)" options={choicesOf('parts/side')} />
      {sizes.map(([field, label]) => (
        <SizeField key={field} path={`${path}/${field}`} label={label} measured={false} />
      ))}
    </div>
  )
}
