import type { Problem } from '../../problem/problem.ts'
import { type FieldName, fieldOf } from './field-paths.ts'
import type { Said } from './part-fields.tsx'
import type { Check } from './use-quick-check.ts'

/** Brings what the program says of the project to the fields it came from. Only answers to the numbers in the form count. */
export function saidOf(check: Check): Said {
  const problems = check.kind === 'wrong' ? check.problems : []
  const questions = check.kind === 'answered' ? check.report.questions : []
  const sizes = check.kind === 'answered' ? check.report.sizes : []
  const first = (list: readonly Problem[], field: FieldName) => list.find((p) => fieldOf(p.path) === field)
  return {
    fault: (field) => first(problems, field),
    question: (field) => first(questions, field),
    size: (path) => sizes.find((s) => s.path === path),
  }
}

/** What is wrong with the project and belongs to no field of the form. */
export const homeless = (check: Check): readonly Problem[] =>
  check.kind === 'wrong' ? check.problems.filter((p) => fieldOf(p.path) === undefined) : []
