import { flushSync } from 'react-dom'
import { valueAt, withValue } from '../../../project/path.ts'
import { useWork } from '../../work/work-context.ts'

export interface OrderButtonsProps {
  /** The list, and the place in it of what moves. */
  readonly list: string
  readonly at: number
  readonly count: number
  readonly name: string
}

/** Moves a record along the hilt: the order of the list is the order from the rear. */
export function OrderButtons({ list, at, count, name }: OrderButtonsProps) {
  const { job } = useWork()
  const move = (by: number, button: HTMLElement) => {
    flushSync(
      () =>
        void job.edit((p) => {
          const records = valueAt(p, list) as readonly unknown[]
          const order = records.filter((_, i) => i !== at)
          return withValue(p, list, [...order.slice(0, at + by), records[at], ...order.slice(at + by)])
        }),
    )
    // The button moved with its record; at the end of the list it is off.
    if (button.isConnected) button.focus()
  }
  return (
    <span className="order-buttons">
      {(
        [
          [-1, '↑', 'towards the rear', at === 0],
          [1, '↓', 'towards the blade', at === count - 1],
        ] as const
      ).map(([by, sign, words, off]) => (
        <button
          key={by}
          type="button"
          className="button"
          aria-disabled={off}
          aria-label={`Move ${name} ${words}`}
          title={`Move ${words}`}
          onClick={(event) => !off && move(by, event.currentTarget)}
        >
          {sign}
        </button>
      ))}
    </span>
  )
}
