// npm ci && npm run make: one file for the browser, the licence beside it
import { build } from 'esbuild'
import { copyFileSync } from 'node:fs'

const lib = new URL('../../src/Desk/wwwroot/lib/', import.meta.url)
await build({
  entryPoints: ['three.entry.js'],
  outfile: new URL('three.bundle.js', lib).pathname,
  bundle: true,
  format: 'esm',
  minify: true,
  charset: 'utf8',
  legalComments: 'eof',
  target: 'es2022',
})
copyFileSync('node_modules/three/LICENSE', new URL('three.LICENSE.txt', lib))
