import { provesJobs, seedsFrom } from './jobs.ts'

provesJobs(seedsFrom(1, 100))
