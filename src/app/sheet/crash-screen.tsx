import { Component, type ReactNode } from 'react'

interface Props {
  readonly children: ReactNode
  /** What the person typed, to be kept before anything else. */
  readonly rescue: () => string
}

/** A fault of the program. What was typed comes first; loading the page anew comes second. */
export class CrashScreen extends Component<Props, { readonly fault: string | undefined }> {
  override state: { readonly fault: string | undefined } = { fault: undefined }

  static getDerivedStateFromError(error: unknown) {
    return { fault: error instanceof Error ? error.message : String(error) }
  }

  override render() {
    if (this.state.fault === undefined) return this.props.children
    return (
      <main className="crash">
        <h1>This page has failed</h1>
        <p>Your numbers are safe to copy from here:</p>
        <textarea
          className="field-input number"
          readOnly
          rows={8}
          aria-label="Your numbers"
          value={this.props.rescue()}
        />
        <p className="small soft">What the program said: {this.state.fault}</p>
        <button type="button" className="button button-strong" onClick={() => location.reload()}>
          Load the page anew
        </button>
      </main>
    )
  }
}
