import { lazy, Suspense, useEffect, useMemo, useState } from 'react'
import type { QuickReport } from '../../worker/bench.ts'
import type { Desk } from '../../worker/desk.ts'
import type { WorkCalls } from '../../worker/work-calls.ts'
import { CrashScreen } from '../sheet/crash-screen.tsx'
import { capital, signed } from '../sheet/numbers.ts'
import { SheetMark } from '../sheet/sheet-mark.tsx'
import { TitleBlock } from '../sheet/title-block.tsx'
import { UpdateNotice } from '../sheet/update-notice.tsx'
import { Survives } from '../solid/survives.tsx'
import { useTheme } from '../theme/theme.ts'
import { statusWords, VerdictMark } from '../verdict/verdict-mark.tsx'
import { Answer } from './answer.tsx'
import { type FieldName, fieldLabels, fieldOf, withFix } from './field-paths.ts'
import { forgetForm, type Kept, keepForm, openingForm } from './kept-form.ts'
import { Opening } from './opening.tsx'
import { QuickFields } from './quick-fields.tsx'
import { emptyForm, exampleForm, isEmpty, own, type QuickForm } from './quick-form.ts'
import { readForm } from './read-form.ts'
import { saidOf } from './said.ts'
import type { Done } from './undo-note.tsx'
import { useQuickCheck } from './use-quick-check.ts'

/** Comes with the first thing that can be undone. */
const UndoNote = lazy(() => import('./undo-note.tsx'))

/** The first page: a few sizes in, an answer beside them at every key. */
export function QuickPage({ desk }: { readonly desk: Desk<WorkCalls> }) {
  const { theme, choose } = useTheme()
  const [kept, setKept] = useState(openingForm)
  const { form, invented } = kept
  // Once shown it stays: the form must not move up under the hand at the first key.
  const [opening, setOpening] = useState(() => isEmpty(form))
  const [lasts, setLasts] = useState(true)
  const [done, setDone] = useState<Done>()
  const [field, setField] = useState<FieldName>()
  const [look, setLook] = useState<{ readonly theta: number; readonly z?: number }>({ theta: 0 })
  useEffect(() => {
    document.title = 'Sledwright'
  }, [])
  const reading = useMemo(() => readForm(form), [form])
  const quick = useQuickCheck(desk, reading, look)
  const said = useMemo(() => saidOf(quick.check), [quick.check])
  const put = (next: Kept, by?: Done) => {
    setKept(next)
    setLasts(keepForm(next))
    setDone(by)
  }
  const setForm = (next: QuickForm, by?: Done) => put({ form: next, invented }, by)
  const fill = (next: Kept, by?: Done) => {
    put(next, by)
    setOpening(isEmpty(next.form))
    setLook({ theta: 0 })
  }
  const goTo = (name: FieldName) => {
    const part = name.split('.')[0]
    if ((part === 'cell' || part === 'speaker' || part === 'board') && form[part].choice !== own)
      setForm({ ...form, [part]: { ...form[part], choice: own } })
    focusOn(firstField(name))
  }
  return (
    <CrashScreen what="my numbers" rescue={() => JSON.stringify(form, null, 2)} forget={forgetForm}>
      <div className="page">
        <header className="masthead">
          <h1>
            <SheetMark /> Sledwright <small>Quick check</small>
          </h1>
          <div className="masthead-tools">
            <a className="button button-plain" href="#jobs">
              Jobs
            </a>
            {!isEmpty(form) && (
              <button
                type="button"
                className="button"
                onClick={() => fill({ form: emptyForm, invented: false }, { text: 'The form is empty.', before: kept })}
              >
                Empty the form
              </button>
            )}
            <button type="button" className="button" onClick={() => choose(theme === 'dark' ? 'light' : 'dark')}>
              {theme === 'dark' ? 'Light' : 'Dark'}
            </button>
          </div>
        </header>
        <main className="board-area">
          <section className="side" aria-label="What is known">
            {(isEmpty(form) || (opening && !invented)) && (
              <Opening used={!isEmpty(form)} onExample={() => fill({ form: exampleForm, invented: true })} />
            )}
            {invented && (
              <p className="example-note small">Invented numbers, of a river ferry’s lantern. Type yours over them.</p>
            )}
            <QuickFields
              form={form}
              onForm={setForm}
              said={said}
              onField={setField}
              sledHint={sledHint(quick.report)}
            />
          </section>
          <Answer
            desk={desk}
            reading={reading}
            quick={quick}
            look={look}
            onLook={setLook}
            field={field}
            theme={theme}
            onFix={(fix) => {
              const next =
                typeof fix.value === 'object' || fix.value === undefined
                  ? undefined
                  : withFix(form, fix.path, fix.value)
              if (!next) return undefined
              const text = `Applied: ${fix.text}`
              return () => setForm(next, { text, field: fieldOf(fix.path), before: kept, earlier: done })
            }}
            done={
              done && (
                <Survives instead={done.text}>
                  <Suspense>
                    <UndoNote
                      done={done}
                      onUndo={() =>
                        done.before && put(done.before, done.earlier ?? { text: 'Undone: as it was before.' })
                      }
                    />
                  </Suspense>
                </Survives>
              )
            }
            goTo={(name) => ({ label: fieldLabels[name], go: () => goTo(name) })}
          />
        </main>
        <TitleBlock
          drawing="Quick check"
          layout={quick.report?.layout && `board ${quick.report.layout}`}
          lasts={lasts}
        />
        <Dock quick={quick.check.kind === 'answered' ? quick.check.report : undefined} />
        <UpdateNotice />
      </div>
    </CrashScreen>
  )
}

/** After the next drawing: the own sizes of a part may only then be there. */
function focusOn(id: string): void {
  requestAnimationFrame(() => document.getElementById(id)?.focus())
}

/** The first field to put the hand into for a part: its own sizes, which are about to appear. */
const firstField = (name: FieldName): string =>
  name === 'cell' || name === 'speaker' ? `${name}.diameter` : name === 'board' ? 'board.height' : name

const sledHint = (report: QuickReport | undefined): string | undefined => {
  const radius = report?.lengthwise.sleds[0]?.radius
  return radius === undefined ? undefined : `${(2 * radius).toFixed(1)}, computed`
}

/** On small screens the verdict stays in sight while one types. */
function Dock({ quick }: { readonly quick: QuickReport | undefined }) {
  if (!quick) return undefined
  const tightest = quick.findings[0]
  return (
    <a className="dock" href="#answer" aria-label={`To the verdict: ${statusWords[quick.verdict]}`}>
      <VerdictMark status={quick.verdict} />
      <b>{statusWords[quick.verdict]}</b>
      {tightest && <span className="number">{signed(tightest.margin.worst, tightest.unit)}</span>}
      {tightest && <span className="dock-title small">{capital(tightest.title)}</span>}
    </a>
  )
}
