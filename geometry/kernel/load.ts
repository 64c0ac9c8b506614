import type { Kernel } from './manifold.ts'

/** The kernel, ready for use. `wasmUrl` tells a browser where its binary lies; Node finds it by itself. */
export async function loadKernel(wasmUrl?: string): Promise<Kernel> {
  const { default: start } = await import('manifold-3d')
  const kernel = await start(wasmUrl ? { locateFile: () => wasmUrl } : undefined)
  kernel.setup()
  return kernel
}
