interface OpeningProps {
  /** Something is typed already: the example would write over it. */
  readonly used: boolean
  readonly onExample: () => void
}

/** The first sentence, and the way to see the page at work without a hilt in hand. */
export function Opening({ used, onExample }: OpeningProps) {
  return (
    <div className="opening">
      <p>Does it all go in? Type the bore and its depth, and choose what goes into it.</p>
      <button type="button" className="button" disabled={used} onClick={onExample}>
        Try it with invented numbers
      </button>
      <p className="small">
        Or begin <a href="#new">a full job</a>, or look at <a href="#jobs">jobs and demos</a>.
      </p>
    </div>
  )
}
