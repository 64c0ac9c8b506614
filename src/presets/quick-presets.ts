import boards from '../../presets/boards.json' with { type: 'json' }
import cells from '../../presets/cells.json' with { type: 'json' }
import contacts from '../../presets/contacts.json' with { type: 'json' }
import processes from '../../presets/processes.json' with { type: 'json' }
import speakers from '../../presets/speakers.json' with { type: 'json' }
import wires from '../../presets/wires.json' with { type: 'json' }
import { type Presets, presetsOf } from './registry.ts'
import { toolsFile } from './tools-file.ts'

/** The presets that a quick check rests on, without threads, drills and the rest: half the page's data stays away. */
export function quickPresets(): Presets {
  return presetsOf([boards, cells, contacts, processes, speakers, toolsFile, wires])
}
