import { plausible } from '../entry/plausible.ts'
import type { BoreStepInput, SectionInput } from '../project/schema/hilt.ts'
import type { QuantityInput } from '../project/schema/quantity.ts'
import { add, combine, exact, least, type Quantity, scale, sub } from '../quantity/quantity.ts'
import { freeBore, limitsQuantity, threadReadingQuestion } from '../rules/thread.ts'
import { parseThread, type Thread } from '../rules/thread-designation.ts'
import type { Variant } from './clamp-states.ts'
import { ask, type Context, wrong } from './context.ts'
import type { Ends } from './heights.ts'
import type { Step } from './metal.ts'
import { quantityOf } from './quantity.ts'
import { walls } from './rare.ts'
import { questionSize } from './suspicions.ts'

const unclamped: readonly Variant[] = [{ id: undefined, diameter: undefined, states: undefined }]
const onAxis = { x: exact(0), y: exact(0), sway: undefined }

/** Lengths of steps may miss the section's length by this much before it is called a contradiction, mm. */
const lengthSlack = 0.5

/** The steps of a section's bore, from its rear. */
export function stepsOf(ctx: Context, s: SectionInput, ends: Ends, sway: Quantity | undefined): Step[] {
  const path = `sections/${s.id}`
  if (s.bore.length === 0) {
    const hint = 'A plain tube has one step with its diameter.'
    wrong(ctx, 'missing', `${path}/bore`, 'no steps', 'at least one step', hint)
    return []
  }
  const lengths = stepLengths(ctx, `${path}/bore`, s.bore, ends)
  if (!lengths) return []
  const centre = s.eccentricity ? walls().eccentric(ctx, s.id, s.eccentricity) : onAxis
  const variants = s.clamp ? walls().clampStates(ctx, s.id, s.clamp) : unclamped
  let z = ends.rear
  return s.bore.flatMap((input, i) => {
    const z0 = z
    z = i === s.bore.length - 1 ? ends.blade : add(z, lengths[i] as Quantity)
    const stepPath = `${path}/bore/${input.id ?? i}`
    const base = {
      name:
        input.name ??
        (s.bore.length === 1 ? `bore of ${s.name ?? s.id}` : `${input.id ?? `step ${i + 1}`} of ${s.name ?? s.id}`),
      section: s.id,
      z0,
      z1: z,
      x: centre.x,
      y: centre.y,
      sway: sway && centre.sway ? add(sway, centre.sway) : (sway ?? centre.sway),
    }
    const id = `sections/${s.id}/${input.id ?? i}`
    return variants.map((v): Step => {
      const size = diameters(ctx, input, stepPath, id, v.diameter)
      const kind = input.kind ?? (input.thread ? 'threaded' : 'plain')
      const half = (q: Quantity | undefined) => (kind === 'solid' ? exact(0) : q && scale(q, 0.5))
      return {
        ...base,
        id: v.id ? `${id}-${v.id}` : id,
        kind,
        r0: half(size.d0),
        r1: half(size.d1),
        states: v.states,
        thread: size.thread,
      }
    })
  })
}

interface LengthStep {
  readonly id?: string | undefined
  readonly length?: QuantityInput | undefined
}

/** Each step's length, of a bore or an outside; the one without takes what is left of the section. */
export function stepLengths(
  ctx: Context,
  path: string,
  steps: readonly LengthStep[],
  ends: Ends,
): Quantity[] | undefined {
  const open = steps.flatMap((b, i) => (b.length === undefined ? [i] : []))
  if (open.length > 1)
    return wrong(
      ctx,
      'missing',
      `${path}/${steps[open[1] as number]?.id ?? open[1]}/length`,
      undefined,
      'one step without a length at most',
      'Give the length of every step but one.',
    )
  const given = steps.map((b, i) =>
    b.length === undefined
      ? exact(0)
      : quantityOf(ctx, b.length, { path: `${path}/${b.id ?? i}/length`, as: 'length' }),
  )
  if (given.some((q) => q === undefined)) return undefined
  const lengths = given as Quantity[]
  const whole = sub(ends.blade, ends.rear)
  const rest = combine([[whole, 1], ...lengths.map((q): [Quantity, number] => [q, -1])])
  const [last] = open
  if (last === undefined && Math.abs(rest.nominal) > lengthSlack)
    return wrong(
      ctx,
      'contradiction',
      path,
      `steps of ${round(whole.nominal - rest.nominal)} mm`,
      `the section's length, ${round(whole.nominal)} mm`,
      'Correct a length, or leave one step’s length out.',
    )
  if (last !== undefined && rest.nominal <= 0)
    return wrong(
      ctx,
      'contradiction',
      `${path}/${steps[last]?.id ?? last}/length`,
      `${round(rest.nominal)} mm left`,
      'more than 0',
      `The other steps already fill the section's ${round(whole.nominal)} mm.`,
    )
  return lengths.map((q, i) => (i === last ? rest : q))
}

const round = (n: number): number => Number(n.toFixed(3))

/** A clamp closes on the whole section; where a step of it is narrower, that is what counts. */
const narrower = (a: Quantity | undefined, b: Quantity | undefined): Quantity | undefined =>
  a && b ? (least(a) < least(b) ? a : b) : (a ?? b)

/** The free diameter of a step at both ends, of a clamp's too; undefined where nothing was measured. */
function diameters(
  ctx: Context,
  b: BoreStepInput,
  path: string,
  of: string,
  clamp: Quantity | undefined,
): { d0: Quantity | undefined; d1: Quantity | undefined; thread: Step['thread'] } {
  if (b.kind === 'solid') return { d0: exact(0), d1: exact(0), thread: undefined }
  const read = quantityOf(ctx, b.diameter, { path: `${path}/diameter`, as: 'bore' })
  questionSize(ctx, b.diameter, read, plausible.bore, `${path}/diameter`)
  const thread = b.thread === undefined ? undefined : threadOf(ctx, b, path)
  const free = narrower(thread ? fromThread(ctx, b, thread, read, path) : read, clamp)
  if (b.kind === 'threaded' && b.thread === undefined)
    ctx.missing.push({
      path: `${path}/thread`,
      what: 'thread of a threaded bore',
      hint: 'Give its designation, for example M33x1.5 or 1 5/16-18: the crests decide what passes.',
      of,
    })
  if (!free && b.diameter === undefined && b.thread === undefined)
    ctx.missing.push({
      path: `${path}/diameter`,
      what: 'bore diameter',
      hint: 'Read it with inside jaws at 0°, 60° and 120°.',
      of,
    })
  const end =
    b.diameterEnd === undefined
      ? free
      : narrower(quantityOf(ctx, b.diameterEnd, { path: `${path}/diameterEnd`, as: 'bore' }), clamp)
  if (b.diameterEnd !== undefined) questionSize(ctx, b.diameterEnd, end, plausible.bore, `${path}/diameterEnd`)
  const allowance = quantityOf(ctx, b.allowance, { path: `${path}/allowance`, as: 'offset', min: 0, max: 5 })
  const less = (q: Quantity | undefined) =>
    q && allowance
      ? combine([
          [q, 1],
          [allowance, -2],
        ])
      : q
  const named = thread && { name: thread.name, major: thread.major, pitch: thread.pitch }
  return { d0: less(free), d1: less(end), thread: named }
}

function threadOf(ctx: Context, b: BoreStepInput, path: string): Thread | undefined {
  const parsed = parseThread(b.thread ?? '', `${path}/thread`)
  if (parsed.ok) return parsed.value
  ctx.problems.push(...parsed.problems)
  return undefined
}

/** The crests decide. A reading wider than they can be is questioned, and the crests are computed instead. */
function fromThread(
  ctx: Context,
  b: BoreStepInput,
  thread: Thread,
  read: Quantity | undefined,
  path: string,
): Quantity | undefined {
  const limits = freeBore(thread, b.threadClass ?? thread.toleranceClass, `${path}/threadClass`)
  if (!limits.ok) {
    ctx.problems.push(...limits.problems)
    return undefined
  }
  const computed = limitsQuantity(limits.value, thread, `${path}/thread`)
  if (!read) return computed
  const question = threadReadingQuestion(read.nominal, thread, limits.value, `${path}/diameter`)
  if (question) ctx.questions.push(question)
  else if (read.nominal < computed.nominal - thread.pitch / 2 || read.nominal > computed.nominal + thread.pitch / 2)
    ask(
      ctx,
      `${path}/diameter`,
      read.nominal,
      `near ${limits.value.nominal.toFixed(2)} mm, the crests of ${thread.name}`,
      'Read it again, or correct the thread.',
    )
  // Whichever of the two is wrong, what is wider than the crests is not counted on.
  return read.nominal > limits.value.max ? computed : read
}
