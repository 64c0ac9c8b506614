/** What every project file says it is. */
export const formatName = 'sledwright'
export const formatVersion = 1

/** The lists of a project, in the order in which they are written. */
export const listNames = [
  'job',
  'hilts',
  'blades',
  'sections',
  'joints',
  'features',
  'sleeves',
  'screws',
  'parts',
  'layouts',
  'sleds',
  'insertions',
  'states',
  'wires',
  'vents',
  'printer',
  'permissions',
  'wishes',
  'thresholds',
  'record',
] as const

export type ListName = (typeof listNames)[number]
