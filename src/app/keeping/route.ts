/** What an address asks for. The part behind "#" is the whole of it: the page works from any folder, without a server. */
export type Route =
  | { readonly kind: 'jobs' }
  | { readonly kind: 'new' }
  | { readonly kind: 'job'; readonly id: string }
  | { readonly kind: 'demo'; readonly name: string }
  | { readonly kind: 'link'; readonly data: string }
  /** A quick check to go on with, as JSON. */
  | { readonly kind: 'grow'; readonly text: string }
  | { readonly kind: 'nothing' }

/** The route of an address without its "#". Whatever stands there, it has one. */
export function routeOf(address: string): Route {
  const slash = address.indexOf('/')
  const word = slash < 0 ? address : address.slice(0, slash)
  const rest = slash < 0 ? '' : address.slice(slash + 1)
  if (word === 'jobs' && rest === '') return { kind: 'jobs' }
  if (word === 'new' && rest === '') return { kind: 'new' }
  if (word === 'job' && /^[a-z0-9-]{1,60}$/.test(rest)) return { kind: 'job', id: rest }
  if (word === 'demo' && /^[a-z0-9-]{1,60}$/.test(rest)) return { kind: 'demo', name: rest }
  if (word === 'link' && rest !== '') return { kind: 'link', data: rest }
  const text = word === 'grow' ? decoded(rest) : undefined
  return text === undefined ? { kind: 'nothing' } : { kind: 'grow', text }
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text)
  } catch {
    return undefined
  }
}
