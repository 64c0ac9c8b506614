import './fill.css'
import { MovesList } from './moves-list.tsx'
import { PartsList } from './parts-list.tsx'
import { StatesList } from './states-list.tsx'
import { WiresList } from './wires-list.tsx'

/** What goes in, how it is wired, how it gets there, and what is away in which state. */
export default function FillStep() {
  return (
    <div className="fill">
      <PartsList />
      <WiresList />
      <MovesList />
      <StatesList />
    </div>
  )
}
