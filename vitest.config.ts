import { defineConfig } from 'vitest/config'
import { LongestFirst } from './tests/run/longest-first.ts'

export default defineConfig({
  test: {
    include: ['tests/{unit,property,oracle}/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    environment: 'node',
    // Left to itself the runner keeps a core free, which of two is half.
    maxWorkers: '100%',
    // Every file loads much the same modules, and none leaves a trace in them: they are loaded once a worker.
    isolate: false,
    sequence: { sequencer: LongestFirst },
    // Exact geometry and other kernels take their time on a small machine; a limit is there to end a hang, not to time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})
