import './sheet.css'

export interface TitleBlockProps {
  /** What is drawn, in a word or two. */
  readonly drawing: string
  readonly layout: string | undefined
  /** Whether what is typed is there when the browser is opened again. */
  readonly lasts: boolean
}

/** The title block of the sheet, as at the foot of any workshop drawing. */
export function TitleBlock({ drawing, layout, lasts }: TitleBlockProps) {
  return (
    <footer className="title-block">
      <dl>
        <Cell name="Drawing" text={drawing} />
        <Cell name="Arrangement" text={layout ?? '–'} />
        <Cell name="Sizes" text="millimetres, degrees" />
        <Cell name="Seen" text="from the rear, θ clockwise from the switch line" />
        <Cell
          name="Kept"
          text={`${lasts ? 'on this machine only' : 'only until this page is closed'}; nothing is sent`}
        />
      </dl>
    </footer>
  )
}

function Cell({ name, text }: { readonly name: string; readonly text: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{text}</dd>
    </div>
  )
}
