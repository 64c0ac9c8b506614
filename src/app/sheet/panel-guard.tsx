import { Component, type ReactNode } from 'react'

interface Props {
  readonly children: ReactNode
  /** What the panel is called in a sentence: `The solid`. */
  readonly what: string
  /** When this is another one the panel is tried again: what broke it may be mended. */
  readonly of: unknown
}

interface State {
  readonly fault: string | undefined
  readonly of: unknown
}

/** A fault in one panel leaves the others standing. */
export class PanelGuard extends Component<Props, State> {
  override state: State = { fault: undefined, of: this.props.of }

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { fault: error instanceof Error ? error.message : String(error) }
  }

  static getDerivedStateFromProps({ of }: Props, state: State): State | null {
    return of === state.of ? null : { fault: undefined, of }
  }

  override render() {
    if (this.state.fault === undefined) return this.props.children
    return (
      <section className="panel-fault" aria-label={`${this.props.what} has failed`}>
        <p>
          <b>{this.props.what} has failed.</b> The rest of the page works on, and the job is not touched.
        </p>
        <p className="small soft">What the program said: {this.state.fault}</p>
        <button type="button" className="button" onClick={() => this.setState({ fault: undefined })}>
          Show it again
        </button>{' '}
        {/* What could not be fetched, because a newer page stands there, is not fetched again before that. */}
        <button type="button" className="button" onClick={() => location.reload()}>
          Load the page anew
        </button>
      </section>
    )
  }
}
