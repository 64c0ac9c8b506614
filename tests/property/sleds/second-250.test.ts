import { provesSleds } from './sleds.ts'

provesSleds(251, 250)
