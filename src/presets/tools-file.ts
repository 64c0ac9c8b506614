import tools from '../../presets/tools.json' with { type: 'json' }

/** Tools say their kind and source once for the whole file. */
export const toolsFile = {
  title: tools.title,
  unit: tools.unit,
  entries: tools.entries.map((entry) => ({ kind: 'tool', source: tools.source, ...entry })),
}
