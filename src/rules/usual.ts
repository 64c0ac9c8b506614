/** Settings that the rules share with a project's thresholds; there each can be changed. Common practice, no source. */
export const usual = {
  /** Least one-sided gap between the sled with its contents and the hilt, mm. */
  clearance: 0.15,
  /** Least gap between two parts in the sled, mm. */
  partGap: 0.2,
  /** Least compression of a contact that still presses, mm. */
  preload: 0.5,
} as const
