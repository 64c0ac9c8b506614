import { provesJobs, seedsFrom } from './jobs.ts'

provesJobs(seedsFrom(101, 100))
