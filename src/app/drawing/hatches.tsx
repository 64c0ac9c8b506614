import './drawing.css'

/**
 * The hatches of all drawings, once a page. Thin lines at 45°; neighbouring pieces lean the other way (ISO 128-3).
 */
export function Hatches() {
  return (
    <svg className="hatches" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        <Hatch id="hatch-metal-0" gap={6} lean={45} />
        <Hatch id="hatch-metal-1" gap={6} lean={-45} />
        <Hatch id="hatch-sled" gap={9} lean={-45} />
        <Hatch id="hatch-lack" gap={3.5} lean={45} />
      </defs>
    </svg>
  )
}

function Hatch({ id, gap, lean }: { readonly id: string; readonly gap: number; readonly lean: number }) {
  return (
    <pattern id={id} width={gap} height={gap} patternUnits="userSpaceOnUse" patternTransform={`rotate(${lean})`}>
      <line className={id} x1="0" y1="0" x2="0" y2={gap} />
    </pattern>
  )
}
