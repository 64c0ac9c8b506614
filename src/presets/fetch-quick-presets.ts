import boards from '../../presets/boards.json?url'
import cells from '../../presets/cells.json?url'
import contacts from '../../presets/contacts.json?url'
import processes from '../../presets/processes.json?url'
import speakers from '../../presets/speakers.json?url'
import wires from '../../presets/wires.json?url'
import { type Presets, presetsOf } from './registry.ts'
import { toolsFile } from './tools-file.ts'

/**
 * The presets that a quick check rests on, fetched as data by a page's worker, without threads, drills and the rest.
 * Fails as fetching does.
 */
export async function fetchQuickPresets(): Promise<Presets> {
  const files = await Promise.all([boards, cells, contacts, processes, speakers, wires].map(fetched))
  return presetsOf([...files, toolsFile])
}

async function fetched(url: string): Promise<{ readonly entries: readonly unknown[] }> {
  const response = await fetch(url)
  if (!response.ok) throw new Error(`${url}: ${response.status}`)
  return (await response.json()) as { readonly entries: readonly unknown[] }
}
