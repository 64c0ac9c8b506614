import { useEffect, useRef, useState } from 'react'
import { Comparing } from '../compare/comparing.tsx'
import type { Theme } from '../theme/theme.ts'
import { useWork } from '../work/work-context.ts'
import { useKeeping } from './keeping-context.ts'
import { LinkDialog } from './link-dialog.tsx'
import { openFile } from './open-file.ts'
import { OpenTrouble } from './open-trouble.tsx'
import { canChoosePlace, pickFile } from './pick-file.ts'
import { type Saved, saveJob } from './save-job.ts'
import { useLightDismiss } from './use-light-dismiss.ts'
import { useSaveKey } from './use-save-key.ts'

/** What can be done with the job as a whole, and the ways to others. */
export function JobMenu({ theme, onTheme }: { readonly theme: Theme; readonly onTheme: (theme: Theme) => void }) {
  const { job, desk } = useWork()
  const { keeper } = useKeeping()
  const menu = useRef<HTMLDetailsElement>(null)
  const [said, setSaid] = useState<string>()
  const [link, setLink] = useState(false)
  const [comparing, setComparing] = useState(false)
  useLightDismiss(menu)
  const save = async (another: boolean) => setSaid(savedWords(await saveJob(job.get(), keeper.id, another)))
  useSaveKey(() => void save(false))
  useEffect(() => {
    if (said === undefined) return
    const timer = setTimeout(() => setSaid(undefined), 8000)
    return () => clearTimeout(timer)
  }, [said])
  const does = (deed: () => void) => () => {
    if (menu.current) menu.current.open = false
    deed()
  }
  const open = async () => {
    const chosen = await pickFile()
    if (chosen) await openFile(desk, chosen)
  }
  return (
    <>
      <details className="job-menu" ref={menu}>
        <summary className="button head-button">Job</summary>
        <ul className="job-menu-list">
          <li>
            <a href="#jobs">All jobs</a>
          </li>
          <li>
            <a href="#new">New job</a>
          </li>
          <li>
            <a href="#quick">Quick check</a>
          </li>
          <li className="menu-rule">
            <Deed text="Rename" onDeed={does(toName)} />
          </li>
          <li>
            <Deed text="Open a file …" onDeed={does(() => void open())} />
          </li>
          <li>
            <Deed text="Save as a file" keys="Ctrl+S" onDeed={does(() => void save(false))} />
          </li>
          {canChoosePlace() && (
            <li>
              <Deed text="Save as another file …" onDeed={does(() => void save(true))} />
            </li>
          )}
          <li>
            <Deed text="Copy a link to this job …" onDeed={does(() => setLink(true))} />
          </li>
          <li>
            <Deed text="Compare with another job …" onDeed={does(() => setComparing(true))} />
          </li>
          <li className="menu-rule">
            <Deed
              text={theme === 'dark' ? 'Light look' : 'Dark look'}
              onDeed={does(() => onTheme(theme === 'dark' ? 'light' : 'dark'))}
            />
          </li>
        </ul>
      </details>
      <p className={said === undefined ? 'unseen' : 'menu-said small'} aria-live="polite">
        {said}
      </p>
      {comparing && <Comparing onClose={() => setComparing(false)} />}
      {link && <LinkDialog onClose={() => setLink(false)} />}
      <OpenTrouble />
    </>
  )
}

/** To the name in the head, all of it taken: what is typed takes its place. */
const toName = () => document.querySelector<HTMLInputElement>('.head-name')?.select()

interface DeedProps {
  readonly text: string
  readonly keys?: string
  readonly onDeed: () => void
}

function Deed({ text, keys, onDeed }: DeedProps) {
  return (
    <button type="button" onClick={onDeed}>
      {text}
      {keys && <kbd className="small soft">{keys}</kbd>}
    </button>
  )
}

function savedWords(saved: Saved): string | undefined {
  switch (saved.kind) {
    case 'saved':
      return `Saved as ${saved.name}.`
    case 'downloaded':
      return `${saved.name} is in your downloads.`
    case 'failed':
      return `No file was written: ${saved.message}`
    case 'given-up':
      return undefined
  }
}
