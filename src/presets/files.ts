import boards from '../../presets/boards.json' with { type: 'json' }
import cells from '../../presets/cells.json' with { type: 'json' }
import connectors from '../../presets/connectors.json' with { type: 'json' }
import contacts from '../../presets/contacts.json' with { type: 'json' }
import drills from '../../presets/drills.json' with { type: 'json' }
import materials from '../../presets/materials.json' with { type: 'json' }
import ports from '../../presets/ports.json' with { type: 'json' }
import processes from '../../presets/processes.json' with { type: 'json' }
import speakers from '../../presets/speakers.json' with { type: 'json' }
import switches from '../../presets/switches.json' with { type: 'json' }
import threads from '../../presets/threads.json' with { type: 'json' }
import wires from '../../presets/wires.json' with { type: 'json' }
import { toolsFile } from './tools-file.ts'

/** Every data file by its name under presets/. Imported, not read, so that the browser, the worker and node have the same. */
export const presetFiles = {
  boards,
  cells,
  connectors,
  contacts,
  drills,
  materials,
  ports,
  processes,
  speakers,
  switches,
  threads,
  tools: toolsFile,
  wires,
}
