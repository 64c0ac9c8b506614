import { newJob } from '../../../../src/job/new-job.ts'
import type { Project } from '../../../../src/project/schema/project.ts'

/** A small job to keep, and a change to it. */
export const aJob = (): Project => newJob('Mole lantern')
export const note = (text: string) => (p: Project) => ({ ...p, hilts: [{ id: 'hilt', note: text }] })
