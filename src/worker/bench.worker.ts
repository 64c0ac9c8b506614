import { expose } from 'comlink'
import { quickPresets } from '../presets/quick-presets.ts'
import { Bench } from './bench.ts'

const startPress = async () => {
  const [{ startPress: start }, { wasmUrl }] = await Promise.all([
    import('./press.ts'),
    import('../../geometry/kernel/wasm-url.ts'),
  ])
  return start(wasmUrl)
}

expose(new Bench(quickPresets(), startPress))
