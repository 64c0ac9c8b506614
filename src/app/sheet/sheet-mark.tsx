/** The tool's own mark: a sled with its cell and board in the bore of a tube, seen from the rear. */
export function SheetMark() {
  return (
    <svg className="sheet-mark" width="30" height="30" viewBox="0 0 64 64" aria-hidden="true">
      <circle className="mark-tube" cx="32" cy="32" r="29" />
      <circle className="mark-cell" cx="32" cy="38" r="15" />
      <path className="mark-board" d="M13 17h38" />
      <path className="mark-cross" d="M32 30v16M24 38h16" />
    </svg>
  )
}
