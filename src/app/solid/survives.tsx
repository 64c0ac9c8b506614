import { Component, type ReactNode } from 'react'

/** A solid view that fails takes nothing else with it. */
export class Survives extends Component<
  { readonly children: ReactNode; readonly instead: ReactNode },
  { readonly failed: boolean }
> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  override render() {
    return this.state.failed ? this.props.instead : this.props.children
  }
}
