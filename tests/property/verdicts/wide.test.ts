import { firstWide } from '../../prove/wide-job.ts'
import { provesJobs, seedsFrom } from './jobs.ts'

provesJobs(seedsFrom(firstWide, 40))
