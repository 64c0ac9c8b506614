import { provesJobs } from './jobs.ts'

/*
 * Of the first 5000 jobs those in which a gap was once called falsely clear or clash and no longer is: by the product
 * (2935, 805: a board given by its outline; 2054, 3841: a cut chamfer; 3221: a slotted taper), or by a truth that was
 * wrong itself.
 */
provesJobs([
  495, 533, 975, 1309, 2069, 2108, 2853, 2935, 4428, 4155, 435, 805, 881, 2054, 3221, 3841, 4371, 4408, 4139, 456, 897,
  1404, 1582, 1746, 1901, 2007, 2055, 2233, 2241, 2844, 3093, 3801, 4656, 4684, 1164, 1486, 2444,
])
