import { parseEntry } from '../entry/entry.ts'
import { splitList } from '../entry/list.ts'
import { unitTable } from '../entry/units.ts'
import { bad, good, type Outcome, type Problem, problem } from '../problem/problem.ts'
import type { Rule, RuleInput, RuleValue, RuleValues } from './rule.ts'

/** What was given for an input: as typed, or a number already in the input's unit. */
export type Given = ReadonlyMap<string, string | number | readonly number[]>

/** `diameter=1in` … to a map. Fails with wrong-type for what is no pair, and duplicate-id for a name given twice. */
export function parsePairs(pairs: readonly string[], path: string): Outcome<Given> {
  const given = new Map<string, string>()
  const problems: Problem[] = []
  for (const pair of pairs) {
    const at = pair.indexOf('=')
    const name = pair.slice(0, Math.max(at, 0)).trim()
    if (name === '') problems.push(problem('wrong-type', path, pair, 'name=value', 'Write each input as name=value.'))
    else if (given.has(name))
      problems.push(problem('duplicate-id', `${path}/${name}`, pair, 'each input once', 'Give it once.'))
    else given.set(name, pair.slice(at + 1))
  }
  return problems.length > 0 ? bad(...problems) : good(given)
}

/**
 * Reads and checks everything a rule is given, defaults filled in; all problems at once, each with its path
 * (`rule/input`), the value got, what is allowed and a hint.
 */
export function readInputs(rule: Rule, given: Given): Outcome<RuleValues> {
  const problems: Problem[] = []
  const names = rule.inputs.map((i) => i.name)
  for (const [name, value] of given) {
    if (names.includes(name)) continue
    problems.push(
      problem(
        'unknown-value',
        `${rule.name}/${name}`,
        value,
        `an input of ${rule.name}`,
        `Its inputs: ${names.join(', ')}.`,
      ),
    )
  }
  const values: Record<string, RuleValue> = {}
  for (const input of rule.inputs) {
    const read = readInput(input, given.get(input.name), `${rule.name}/${input.name}`)
    if (!read.ok) problems.push(...read.problems)
    else if (read.value !== undefined) values[input.name] = read.value
  }
  return problems.length > 0 ? bad(...problems) : good(values)
}

type RawValue = string | number | readonly number[] | undefined

function readInput(input: RuleInput, raw: RawValue, path: string): Outcome<RuleValue | undefined> {
  if (raw === undefined) {
    if (input.default !== undefined) return good(input.default)
    if (input.optional) return good(undefined)
    return bad(problem('missing', path, undefined, allowedText(input), `Give ${input.name}=…: ${input.what}`))
  }
  if (input.text) return readText(input.text, raw, input, path)
  if (!input.list) {
    const read = typeof raw === 'object' ? wrongType(input, raw, path) : readNumber(input, raw, path)
    return read
  }
  const parts = typeof raw === 'string' ? splitList(raw, path, input.unit === 'deg') : good([raw].flat())
  if (!parts.ok) return parts
  const read = parts.value.map((part, i) => readNumber(input, part, `${path}/${i}`))
  const problems = read.flatMap((r) => (r.ok ? [] : r.problems))
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((r) => (r.ok ? [r.value] : [])))
}

function readText(choices: true | readonly string[], raw: RawValue, input: RuleInput, path: string): Outcome<string> {
  if (typeof raw !== 'string') return wrongType(input, raw, path)
  if (choices === true || choices.includes(raw)) return good(raw)
  return bad(
    problem('unknown-value', path, raw, `one of: ${choices.join(', ')}`, `Give ${input.name} as one of these.`),
  )
}

function readNumber(input: RuleInput, raw: string | number, path: string): Outcome<number> {
  if (typeof raw === 'number') return inRange(input, raw, path, raw)
  const entry = parseEntry(raw, unitTable(input.unit), path)
  if (!entry.ok) return entry
  if (entry.value.plus !== undefined) {
    return bad(problem('wrong-type', path, raw, 'one value without a tolerance', `Give ${input.name} as one number.`))
  }
  return inRange(input, entry.value.value, path, raw)
}

function inRange(input: RuleInput, value: number, path: string, raw: string | number): Outcome<number> {
  const { min = -Infinity, max = Infinity, exclusiveMin = -Infinity } = input.range ?? {}
  if (value >= min && value <= max && (value > exclusiveMin || exclusiveMin === -Infinity) && Number.isFinite(value)) {
    return good(value)
  }
  const code = Number.isFinite(value) ? 'out-of-range' : 'not-a-number'
  const nearest = value > max ? max : value < min ? min : undefined
  const hint = nearest === undefined ? input.what : `The nearest allowed is ${nearest}${unitOf(input)}.`
  return bad(problem(code, path, raw, allowedText(input), hint))
}

const wrongType = (input: RuleInput, raw: RawValue, path: string): Outcome<never> =>
  bad(problem('wrong-type', path, raw, allowedText(input), input.what))

const unitOf = (input: RuleInput): string => (input.unit === '' ? '' : ` ${input.unit}`)

/** "above 0, up to 100 mm": what an input allows, for messages and lists. */
export function allowedText(input: RuleInput): string {
  if (input.text) return input.text === true ? 'a text' : `one of: ${input.text.join(', ')}`
  const { min, max, exclusiveMin } = input.range ?? {}
  const low = exclusiveMin !== undefined ? `above ${exclusiveMin}` : min !== undefined ? `from ${min}` : ''
  const high = max !== undefined ? `up to ${max}` : ''
  const range = [low, high].filter((s) => s !== '').join(', ')
  return `${input.list ? 'numbers' : 'a number'}${range === '' ? '' : ` ${range}`}${unitOf(input)}`
}
