/** An element with its attributes, its children and the text directly in it. */
export interface Element {
  readonly name: string
  readonly attributes: ReadonlyMap<string, string>
  readonly children: Element[]
  text: string
}

const nameText = '[A-Za-z_][A-Za-z0-9_.:-]*'
const attribute = new RegExp(`\\s+(${nameText})="([^"<]*)"`, 'y')
const opening = new RegExp(`<(${nameText})`, 'y')
const closing = new RegExp(`</(${nameText})\\s*>`, 'y')

/**
 * A strict reader of the XML that 3MF allows: elements, attributes and text. A DTD, which the specification forbids,
 * and whatever else it does not know is refused: it would rather throw than let something pass.
 * @throws when the text is not well formed
 */
export function readXml(source: string): Element {
  const declaration = /^<\?xml version="1\.0" encoding="UTF-8"\?>\s*/.exec(source)
  if (!declaration) throw new Error('it does not begin as UTF-8 XML 1.0')
  let at = declaration[0].length
  const root: Element = { name: '', attributes: new Map(), children: [], text: '' }
  const open = [root]
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at
    const found = pattern.exec(source)
    if (found) at = pattern.lastIndex
    return found
  }
  while (at < source.length) {
    const parent = open.at(-1) as Element
    if (source[at] !== '<') {
      const end = source.indexOf('<', at)
      const text = source.slice(at, end < 0 ? source.length : end)
      at += text.length
      parent.text += resolved(text)
    } else if (source[at + 1] === '/') {
      const name = take(closing)?.[1]
      if (name === undefined || open.pop()?.name !== name) throw new Error(`</${name}> closes nothing, at ${at}`)
    } else {
      const name = take(opening)?.[1]
      if (name === undefined) throw new Error(`no element begins at ${at}: ${source.slice(at, at + 20)}`)
      const attributes = new Map<string, string>()
      for (let a = take(attribute); a; a = take(attribute)) {
        if (attributes.has(a[1] as string)) throw new Error(`${a[1]} stands twice in <${name}>`)
        attributes.set(a[1] as string, resolved(a[2] as string))
      }
      const end = take(/\s*(\/?)>/y)
      if (!end) throw new Error(`<${name}> does not end, at ${at}`)
      const element: Element = { name, attributes, children: [], text: '' }
      parent.children.push(element)
      if (end[1] === '') open.push(element)
    }
  }
  const [only, ...others] = root.children
  if (open.length !== 1 || !only || others.length > 0 || root.text.trim() !== '')
    throw new Error('it is not one element')
  return only
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

function resolved(text: string): string {
  // XML 1.0 holds no control characters but tab and line breaks, and neither of the last two of the first plane.
  if (/[^\t\n\r\u0020-\ufffd]/.test(text)) throw new Error('a character XML cannot hold')
  return text.replace(/&([^;]*);?/g, (all, name: string) => {
    const known = all.endsWith(';') ? entities[name] : undefined
    if (known === undefined) throw new Error(`the entity ${all} is not known`)
    return known
  })
}
