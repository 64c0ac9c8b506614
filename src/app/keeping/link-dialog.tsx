import { useEffect, useRef, useState } from 'react'
import { useWork } from '../work/work-context.ts'

/** The kernel of it is small; it may have to be fetched over a slow line, ms. */
const patience = 20_000
/** Longest link that is opened again, characters. */
const longest = 500_000
/** Above this, mail and messages are known to cut links: common practice, no source. */
const careful = 2000

type Made = { readonly link: string } | { readonly trouble: string }

/** The whole job as a link: made on demand, copied, and shown for where nothing can be copied. */
export function LinkDialog({ onClose }: { readonly onClose: () => void }) {
  const { desk, job } = useWork()
  const dialog = useRef<HTMLDialogElement>(null)
  const [made, setMade] = useState<Made>()
  const [copied, setCopied] = useState<'yes' | 'no'>()
  useEffect(() => {
    dialog.current?.showModal()
    void desk
      .ask('link', patience, (calls) => calls.link(job.get()))
      .then((reply) => {
        if (reply.kind === 'overtaken') return
        if (reply.kind !== 'done') return setMade({ trouble: 'The link could not be made. Save the job as a file.' })
        const link = `${location.href.split('#')[0]}#link/${reply.value}`
        setMade(
          reply.value.length > longest ? { trouble: 'The job is too large for a link. Send it as a file.' } : { link },
        )
      })
  }, [desk, job])
  const copy = async (link: string) => {
    try {
      await navigator.clipboard.writeText(link)
      setCopied('yes')
    } catch {
      setCopied('no')
    }
  }
  return (
    <dialog ref={dialog} className="sheet-dialog" aria-labelledby="link-title" onClose={onClose}>
      <h2 id="link-title">A link to this job</h2>
      {made === undefined && <p className="soft">Packing the job …</p>}
      {made && 'trouble' in made && <p>{made.trouble}</p>}
      {made && 'link' in made && (
        <>
          <p>
            The link is the job: everything in it, names and notes too, is in these{' '}
            <b className="number">{made.link.length}</b> characters. Nothing is stored anywhere else, and whoever has
            the link can read it.
          </p>
          {made.link.length > careful && (
            <p className="small soft">Mail and messages may cut a link of this length. A file comes through whole.</p>
          )}
          <label className="field">
            <span className="field-label">The link</span>
            <textarea
              className="field-input number link-text"
              readOnly
              rows={4}
              value={made.link}
              onFocus={(event) => event.target.select()}
            />
          </label>
        </>
      )}
      <form method="dialog" className="dialog-deeds">
        {made && 'link' in made && (
          <button type="button" className="button button-strong" onClick={() => void copy(made.link)}>
            Copy the link
          </button>
        )}
        <button className="button" type="submit">
          Close
        </button>
        <p className="small" aria-live="polite">
          {copied === 'yes' && 'Copied.'}
          {copied === 'no' && 'The browser does not let it be copied from here: select the text above and copy it.'}
        </p>
      </form>
    </dialog>
  )
}
