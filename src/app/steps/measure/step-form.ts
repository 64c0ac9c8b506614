import type { BoreStepInput } from '../../../project/schema/hilt.ts'

/** The forms of a bore's step as a person tells them apart. */
export type StepForm = 'plain' | 'taper' | 'thread' | 'closed'

export function formOf(step: BoreStepInput): StepForm {
  if (step.kind === 'solid') return 'closed'
  if (step.kind === 'threaded' || step.thread !== undefined) return 'thread'
  return step.diameterEnd === undefined ? 'plain' : 'taper'
}

/** The step in another form; its name, length and diameter stay, what the form has no use for goes. */
export function inForm(step: BoreStepInput, form: StepForm): BoreStepInput {
  const { kind: _, thread, threadClass, diameterEnd, diameter, ...rest } = step
  const wide = diameter === undefined ? {} : { diameter }
  if (form === 'closed') return { ...rest, kind: 'solid' }
  if (form === 'taper') return { ...rest, ...wide, diameterEnd: diameterEnd ?? '' }
  if (form === 'plain') return { ...rest, ...wide }
  return {
    ...rest,
    ...wide,
    kind: 'threaded',
    ...(thread === undefined ? {} : { thread }),
    ...(threadClass === undefined ? {} : { threadClass }),
  }
}
