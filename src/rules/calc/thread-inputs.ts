import { bad, good, type Outcome } from '../../problem/problem.ts'
import { type RuleInput, type RuleValues, textOf } from '../rule.ts'
import { parseThread, type Thread } from '../thread-designation.ts'

export const threadInput: RuleInput = {
  name: 'thread',
  unit: '',
  what: 'Designation of a 60° thread: M33x1.5, M3, 1 1/4-20, 1.25-18 UN, 10-24, 33mm-20.',
  text: true,
}

export const classInput = (classes: string, usual: string): RuleInput => ({
  name: 'class',
  unit: '',
  what: `Tolerance class: ${classes}; ${usual} where none is given.`,
  text: true,
  optional: true,
})

/** The thread of a rule's inputs, and the class typed for it. */
export function readThread(values: RuleValues, rule: string): Outcome<{ thread: Thread; given: string | undefined }> {
  const thread = parseThread(textOf(values, 'thread'), `${rule}/thread`)
  if (!thread.ok) return bad(...thread.problems)
  return good({ thread: thread.value, given: textOf(values, 'class') || thread.value.toleranceClass })
}
