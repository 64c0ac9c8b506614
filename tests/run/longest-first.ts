import { sep } from 'node:path'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Folders of tests that take minutes, where the rest takes seconds. */
const long = ['oracle', 'property'].map((name) => `${sep}tests${sep}${name}${sep}`)

/**
 * The long files before the short ones, so that no core waits at the end for a long one begun last. Without what an
 * earlier run has noted, the size of a file is all there is to go by, and the longest are the smallest.
 */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files)
    const isLong = (file: TestSpecification): boolean => long.some((folder) => file.moduleId.includes(folder))
    return [...usual.filter(isLong), ...usual.filter((file) => !isLong(file))]
  }
}
