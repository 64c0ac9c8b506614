import { formatName, formatVersion, listNames } from '../project/format.ts'
import type { Project } from '../project/schema/project.ts'

/**
 * A job to begin with: one section whose length and bore are the first things to be typed, and one sled that goes in
 * from its rear and waits for the first part.
 */
export function newJob(name: string): Project {
  return {
    ...(Object.fromEntries(listNames.map((list) => [list, []])) as unknown as Project),
    format: formatName,
    version: formatVersion,
    job: [{ id: 'job', name }],
    hilts: [{ id: 'hilt', name }],
    sections: [{ id: 'body', name: 'body', length: '', bore: [{ id: 'bore', name: 'bore' }] }],
    sleds: [{ id: 'main', name: 'sled' }],
    insertions: [
      { id: 'sled-in', name: 'sled in', moves: 'sleds/main', through: { of: 'sections/body', end: 'rear' } },
    ],
  }
}
