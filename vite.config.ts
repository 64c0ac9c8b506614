import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin, type UserConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

/** `vite build` makes the page, `vite build --ssr src/cli/main.ts` the command line. */
export default defineConfig(({ isSsrBuild }) => (isSsrBuild ? commandLine : page))

const page: UserConfig = {
  // Relative addresses, so that the page works from any folder of any server.
  base: './',
  plugins: [react(), offline(), openPolicyWhileDeveloping()],
  worker: { format: 'es' },
  // Pre-bundling would tear manifold's loader away from the wasm file beside it.
  optimizeDeps: { exclude: ['manifold-3d'] },
  // Nothing is inlined: a font or wasm file as a data: address would break the content security policy.
  // Every browser of the target knows modulepreload by itself.
  build: {
    outDir: 'dist/page',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    target: 'es2023',
    modulePreload: { polyfill: false },
  },
}

/** Packages stay outside the bundle: manifold finds its wasm file only from its own folder. */
const commandLine: UserConfig = {
  publicDir: false,
  build: {
    outDir: 'dist/cli',
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'sledwright.js' } },
  },
}

/** The page without a network: everything it is made of is stored at the first visit; an update waits for a yes. */
function offline() {
  return VitePWA({
    registerType: 'prompt',
    // The page does that itself, in a tenth of the code.
    injectRegister: false,
    includeAssets: ['icon.svg'],
    manifest: {
      name: 'Sledwright',
      short_name: 'Sledwright',
      description: 'What fits inside a prop hilt, and the sled that carries it',
      display: 'standalone',
      start_url: './',
      scope: './',
      background_color: '#f6f3ea',
      theme_color: '#f6f3ea',
      icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
    },
    workbox: {
      globPatterns: ['**/*.{html,js,css,svg,woff2,wasm,json}'],
      maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
    },
  })
}

/** The development server injects scripts and styles of its own, which the policy of the built page forbids. */
function openPolicyWhileDeveloping(): Plugin {
  return {
    name: 'open-policy-while-developing',
    apply: 'serve',
    transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
  }
}
