import boards from '../../../presets/boards.json' with { type: 'json' }
import cells from '../../../presets/cells.json' with { type: 'json' }
import contacts from '../../../presets/contacts.json' with { type: 'json' }
import processes from '../../../presets/processes.json' with { type: 'json' }
import speakers from '../../../presets/speakers.json' with { type: 'json' }
import wires from '../../../presets/wires.json' with { type: 'json' }
import { type Presets, presetsOf } from '../../../src/presets/registry.ts'
import { toolsFile } from '../../../src/presets/tools-file.ts'

/** The presets that the page's worker fetches for the quick check, without threads, drills and the rest. */
export function quickPresets(): Presets {
  return presetsOf([boards, cells, contacts, processes, speakers, toolsFile, wires])
}
