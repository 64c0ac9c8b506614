/** Distances of the usual layout, mm; common practice, no source. All of them can be changed in the full job. */
export const usualLayout = {
  mouth: 1,
  endWall: 2,
  // Holds the least wall of a filament print beside a speaker whose depth is known to 1.5 and its back clearance.
  bulkhead: 4,
  // The same between parts that follow each other, some of which a preset knows only roughly.
  between: 8,
  rearContact: 5,
  bladeContact: 2.25,
  cellToOutside: 0.6,
  // Holds the least wall between the two pockets for cells and boards whose sizes come from presets.
  boardToCell: 2.15,
  threadLength: 8,
  closure: 100,
} as const
