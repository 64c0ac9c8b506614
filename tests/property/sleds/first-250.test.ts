import { provesSleds } from './sleds.ts'

provesSleds(1, 250)
