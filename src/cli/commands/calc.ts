import type { Problem } from '../../problem/problem.ts'
import { calculate, findRule, rules } from '../../rules/index.ts'
import { allowedText } from '../../rules/inputs.ts'
import type { Rule, RuleInput, RuleNumber, RuleValue, RuleValues } from '../../rules/rule.ts'
import { hanging, labelled, lines, shown, wrap } from '../columns.ts'
import { exit } from '../exit.ts'
import type { Io } from '../io.ts'
import { plain } from '../numbers.ts'
import { count, problemsJson, problemsText } from '../problems-text.ts'
import { usageText } from '../usage.ts'

export interface CalcOptions {
  readonly list?: boolean
  readonly json?: boolean
}

/** Lists the rules of the trade, or runs one from numbers alone. */
export function calc(name: string | undefined, inputs: readonly string[], options: CalcOptions, io: Io): number {
  if (name === undefined && !options.list) {
    io.err(usageText('Name a rule, or list them with --list.', `Rules: ${ruleNames()}.`, io.width))
    return exit.wrongUsage
  }
  if (name === undefined) return list(rules, options, io)
  const rule = findRule(name)
  if (!rule.ok) return refuse(name, rule.problems, options, io)
  if (options.list) return list([rule.value], options, io)
  const outcome = calculate(name, inputs)
  if (!outcome.ok) return refuse(name, outcome.problems, options, io)
  io.out(options.json ? resultJson(rule.value, outcome.value) : resultText(rule.value, outcome.value, io.width))
  return exit.done
}

const ruleNames = (): string => rules.map((r) => r.name).join(', ')

function refuse(name: string, problems: readonly Problem[], options: CalcOptions, io: Io): number {
  if (options.json) io.out(problemsJson(problems))
  else {
    io.err(problemsText(problems, `${count(problems.length, 'problem')} with the inputs:`, io.width))
    if (findRule(name).ok) io.err(lines(['', `What it takes: sledwright calc --list ${name}`]))
  }
  return exit.wrongUsage
}

function list(chosen: readonly Rule[], options: CalcOptions, io: Io): number {
  io.out(
    options.json
      ? `${JSON.stringify(chosen, null, 2)}\n`
      : lines(chosen.flatMap((r, i) => [...(i === 0 ? [] : ['']), ...ruleLines(r, io.width)])),
  )
  return exit.done
}

function ruleLines(r: Rule, width: number): string[] {
  const column = Math.max(...[...r.inputs, ...r.outputs].map((n) => n.name.length)) + 2
  const example = Object.entries(r.example).map(([k, v]) => (/[\s;"()]/.test(v) ? `'${k}=${v}'` : `${k}=${v}`))
  return [
    ...hanging(`${r.name}  `, r.title, width),
    ...labelled('', r.what, 2, 0, width),
    '  takes',
    ...r.inputs.flatMap((i) => labelled(i.name, inputText(i), 4, column, width)),
    '  gives',
    ...r.outputs.flatMap((o) => labelled(o.name, outputText(o), 4, column, width)),
    ...labelled('by', r.formula, 2, 9, width),
    ...r.sources.flatMap((s, i) => labelled(i === 0 ? 'source' : '', `${s.text} (${s.how})`, 2, 9, width)),
    ...labelled('example', `sledwright calc ${r.name} ${example.join(' ')}`, 2, 9, width),
  ]
}

function inputText(i: RuleInput): string {
  const needed = i.default !== undefined ? `usually ${valueText(i.default)}` : i.optional ? 'may be left out' : 'needed'
  return `${i.what} (${allowedText(i)}; ${needed})`
}

const outputText = (o: RuleNumber): string => (o.unit === '' ? o.what : `${o.what} (${o.unit})`)

const valueText = (v: RuleValue): string =>
  typeof v === 'number' ? plain(v) : typeof v === 'string' ? v : v.map((n) => plain(n)).join(', ')

function resultText(r: Rule, values: RuleValues, width: number): string {
  const told = r.outputs.flatMap((o) => {
    const value = values[o.name]
    const text = value === undefined ? '' : valueText(value)
    return text === '' ? [] : [{ ...o, text: o.unit === '' ? text : `${text} ${o.unit}` }]
  })
  const names = Math.max(...told.map((o) => o.name.length)) + 2
  const short = told.filter((o) => o.text.length <= 24)
  const column = names + Math.max(0, ...short.map((o) => o.text.length)) + 2
  return lines([
    ...wrap(r.title, width),
    ...told.flatMap((o) =>
      o.text.length <= 24
        ? labelled(`${o.name.padEnd(names)}${shown(o.text)}`, o.what, 2, column, width)
        : labelled(o.name, o.text, 2, names, width),
    ),
    ...labelled('by', r.formula, 2, names, width),
  ])
}

function resultJson(r: Rule, values: RuleValues): string {
  const units = Object.fromEntries(r.outputs.map((o) => [o.name, o.unit]))
  return `${JSON.stringify({ rule: r.name, outputs: values, units, formula: r.formula, sources: r.sources }, null, 2)}\n`
}
