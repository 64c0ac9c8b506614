import { bad, good, type Outcome, problem } from '../problem/problem.ts'
import { axialChainRule } from './calc/axial-chain.ts'
import { boardOverCellRule } from './calc/board-over-cell.ts'
import { boreFromReadingsRule } from './calc/bore-from-readings.ts'
import { bundleDiameterRule } from './calc/bundle-diameter.ts'
import { jawFlatRule } from './calc/jaw-flat.ts'
import { sizeFromReadingsRule } from './calc/size-from-readings.ts'
import { smallestBoreRule } from './calc/smallest-bore.ts'
import { threadFreeBoreRule } from './calc/thread-free-bore.ts'
import { threadOutsideRule } from './calc/thread-outside.ts'
import { widestChannelRule } from './calc/widest-channel.ts'
import { type Given, parsePairs, readInputs } from './inputs.ts'
import type { Rule, RuleValues } from './rule.ts'

/** Every rule that `sledwright calc` knows. A new rule is one file in calc/ and one line here. */
export const rules: readonly Rule[] = [
  boreFromReadingsRule,
  sizeFromReadingsRule,
  jawFlatRule,
  threadFreeBoreRule,
  threadOutsideRule,
  smallestBoreRule,
  boardOverCellRule,
  widestChannelRule,
  axialChainRule,
  bundleDiameterRule,
]

/** Fails with unknown-value; the hint lists the rules there are. */
export function findRule(name: string): Outcome<Rule> {
  const rule = rules.find((r) => r.name === name)
  if (rule) return good(rule)
  const hint = `Rules: ${rules.map((r) => r.name).join(', ')}.`
  return bad(problem('unknown-value', 'calc', name, 'the name of a rule', hint))
}

/** Runs a rule from `name=value` pairs as typed, or from values already read. */
export function calculate(name: string, inputs: readonly string[] | Given): Outcome<RuleValues> {
  const rule = findRule(name)
  if (!rule.ok) return rule
  const given = inputs instanceof Map ? good<Given>(inputs) : parsePairs(inputs as readonly string[], name)
  if (!given.ok) return given
  const values = readInputs(rule.value, given.value)
  return values.ok ? rule.value.run(values.value) : values
}
