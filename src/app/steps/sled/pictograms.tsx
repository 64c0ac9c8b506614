/** Small drawings of how a sled is built and what its outside does, in the lines of the drawings. */

type Construction = 'full-cage' | 'open-cradle' | 'discs-on-rods'
type Outside = 'straight' | 'throat' | 'slim' | 'pieces'

const size = { width: 92, height: 44, viewBox: '0 0 92 44', 'aria-hidden': true, focusable: false } as const

/** A lengthwise cut, the rear to the left. */
export function ConstructionPictogram({ kind }: { readonly kind: Construction }) {
  return (
    <svg className="pictogram" {...size}>
      {kind === 'full-cage' && (
        <>
          <path className="pic-body" d="M4 6h84v32H4zM12 6v5h30V6zM48 12v13h30V12z" fillRule="evenodd" />
          <path className="pic-void" d="M12 6h30v24H12zM48 6h30v18H48z" />
        </>
      )}
      {kind === 'open-cradle' && (
        <>
          <path className="pic-body" d="M4 38V8h5v16h33V12h5v12h33V8h5v30z" />
          <path className="pic-body" d="M16 24V13h5v11zM31 24V13h5v11z" />
        </>
      )}
      {kind === 'discs-on-rods' && (
        <>
          <path className="pic-rod" d="M4 12h84M4 32h84" />
          <path className="pic-body" d="M6 5h7v34H6zM32 5h7v34h-7zM52 5h7v34h-7zM79 5h7v34h-7z" />
        </>
      )}
      <path className="pic-axis" d="M0 22h92" />
    </svg>
  )
}

/** The outline in its bore. */
export function OutsidePictogram({ kind }: { readonly kind: Outside }) {
  return (
    <svg className="pictogram" {...size}>
      <path
        className="pic-metal"
        d={kind === 'throat' ? 'M2 3h88v9H58V6H2zM2 41h88v-9H58v6H2z' : 'M2 3h88v3H2zM2 41h88v-3H2z'}
      />
      {kind === 'straight' && <path className="pic-body" d="M8 9h76v26H8z" />}
      {kind === 'throat' && <path className="pic-body" d="M8 9h46v6h30v14H54v6H8z" />}
      {kind === 'slim' && <path className="pic-body" d="M8 9h9v5h58V9h9v26h-9v-5H17v5H8z" />}
      {kind === 'pieces' && <path className="pic-body" d="M8 11h22V8h24v5h30v18H54v5H30v-3H8z" />}
      <path className="pic-axis" d="M0 22h92" />
    </svg>
  )
}
