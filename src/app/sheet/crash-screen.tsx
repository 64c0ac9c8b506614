import { Component, type ReactNode } from 'react'
import { saveFile } from './save-file.ts'

interface Props {
  readonly children: ReactNode
  /** What the person typed, to be kept before anything else, where there is any. */
  readonly rescue?: () => string
  /** What that is called: my job, or my numbers. */
  readonly what?: string
  /** Drops what the page would come back with: with the same it may fail again. */
  readonly forget?: () => void
}

/** A fault of the program. What was typed comes first; loading the page anew comes second. */
export class CrashScreen extends Component<Props, { readonly fault: string | undefined }> {
  override state: { readonly fault: string | undefined } = { fault: undefined }

  static getDerivedStateFromError(error: unknown) {
    return { fault: error instanceof Error ? error.message : String(error) }
  }

  override render() {
    if (this.state.fault === undefined) return this.props.children
    const { rescue, what, forget } = this.props
    return (
      <main className="crash">
        <h1>This page has failed</h1>
        {rescue && (
          <button
            type="button"
            className="button button-strong"
            onClick={() => saveFile('rescued.json', new TextEncoder().encode(rescue()))}
          >
            Save {what}
          </button>
        )}
        <button
          type="button"
          className="button"
          onClick={() => {
            forget?.()
            location.reload()
          }}
        >
          Load the page anew
        </button>
        <p className="small soft">What the program said: {this.state.fault}</p>
        {rescue && (
          <label>
            The same as text, to copy:
            <textarea className="field-input number" readOnly rows={8} value={rescue()} />
          </label>
        )}
      </main>
    )
  }
}
