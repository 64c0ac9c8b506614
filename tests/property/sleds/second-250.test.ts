import { provesHalf } from './sleds.ts'

provesHalf(1)
