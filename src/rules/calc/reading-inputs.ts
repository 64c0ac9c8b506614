import type { RuleInput, RuleNumber, RuleValues } from '../rule.ts'
import type { Source } from '../source.ts'
import type { Combined } from '../uncertainty.ts'

/** Inputs and outputs that all rules on readings share. */

export const readingsInput: RuleInput = {
  name: 'readings',
  unit: 'mm',
  what: 'The readings as the tool showed them, separated by commas or semicolons.',
  range: { exclusiveMin: 0, max: 10_000 },
  list: true,
}

export const coverageInput: RuleInput = {
  name: 'coverage',
  unit: '',
  what: 'Probability that the interval holds the true size.',
  range: { min: 0.5, max: 0.9999 },
  default: 0.99,
}

/** The tool's own figures; the defaults are common practice for the tool named. */
export const toolInputs = (mpe: number, tool: string): readonly RuleInput[] => [
  {
    name: 'mpe',
    unit: 'mm',
    what: `Largest error of the tool, ± (${tool}: ${mpe}, common practice, no source).`,
    range: { min: 0, max: 10 },
    default: mpe,
  },
  {
    name: 'resolution',
    unit: 'mm',
    what: 'Step of the display or scale.',
    range: { min: 0, max: 10 },
    default: 0.01,
  },
]

export const budgetOutputs: readonly RuleNumber[] = [
  { name: 'uncertainty', unit: 'mm', what: 'Combined standard uncertainty.' },
  { name: 'dof', unit: '', what: 'Effective degrees of freedom; "infinite" where no scatter was estimated.' },
  { name: 'coverageFactor', unit: '', what: 'Coverage factor k from t.' },
]

export const budgetValues = (c: Combined): RuleValues => ({
  uncertainty: c.u,
  dof: Number.isFinite(c.dof) ? c.dof : 'infinite',
  coverageFactor: c.k,
})

export const gum: Source = {
  text: 'JCGM 100:2008 (GUM): rectangular limits 4.3.7, resolution F.2.2.1, mean 4.2.3, effective degrees of freedom G.4.1',
  how: 'from memory',
}
