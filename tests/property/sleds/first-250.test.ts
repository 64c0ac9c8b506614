import { provesHalf } from './sleds.ts'

provesHalf(0)
