import { expose } from 'comlink'
import { loadKernel } from '../../geometry/kernel/load.ts'
import { wasmUrl } from '../../geometry/kernel/wasm-url.ts'
import { quickPresets } from '../presets/quick-presets.ts'
import { Bench } from './bench.ts'

expose(new Bench(quickPresets(), () => loadKernel(wasmUrl)))
