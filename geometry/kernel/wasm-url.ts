/** Where the page finds the kernel's binary. Node finds it by itself and has no use for this. */
export { default as wasmUrl } from 'manifold-3d/manifold.wasm?url'
