import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/{unit,property,oracle}/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    environment: 'node',
    // Exact geometry and other kernels take their time on a small machine; a limit is there to end a hang, not to time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})
