import { execFile } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

/** The layers of src from the bottom up; those of one level do not forbid each other, except the two programs on top. */
const LEVELS = [
  ['quantity', 'problem'],
  ['entry', 'body'],
  ['rules'],
  ['project'],
  ['presets'],
  ['resolve'],
  ['sled'],
  ['checks'],
  ['papers'],
  ['job'],
  ['worker'],
  ['app', 'cli'],
]
const LAYERS = LEVELS.flat()
const LEVEL_OF = new Map(LEVELS.flatMap((names, level) => names.map((name) => [name, level] as const)))

/** Who may import a package or data from outside the layers; `geometry/*` stand for the folders of that name. */
const OUTSIDE: Record<string, string[]> = {
  'node:fs': ['src/cli'],
  fs: [],
  react: ['src/app'],
  'react/jsx-runtime': ['src/app'],
  'react-dom/client': ['src/app'],
  zustand: ['src/app'],
  zundo: ['src/app'],
  three: ['src/app'],
  '@react-three/fiber': ['src/app'],
  'manifold-3d': ['geometry/kernel'],
  zod: ['src/project', 'src/presets'],
  commander: ['src/cli'],
  comlink: ['src/worker', 'src/app'],
  fflate: ['src/job'],
  '@jscadui/3mf-export': ['src/job'],
  '../../presets/cells.json': ['src/presets'],
  '../../tests/fixtures/hilt.ts': [],
  '../../dist/cli/sledwright.js': [],
}
const FOLDERS = [...LAYERS.map((name) => `src/${name}`), 'geometry/bore', 'geometry/kernel']

type Seed = { file: string; source: string; allowed: boolean; says: string }

/** What each group of seeds proves -> the seeds: one file each, with one import, forbidden or permitted. */
const SEEDS: Record<string, Seed[]> = {
  'a layer imports only the layers below it': [
    ...LAYERS.flatMap((from) => LAYERS.filter((to) => to !== from).map((to) => layerSeed(from, to))),
    seed('src/checks/deeper', '../../app/x.ts', false),
    seed('src/checks/deeper', '../../../src/app/x.ts', false),
    seed('src/checks/deeper', '../../rules/x.ts', true),
    seed('src/checks/deeper', '../sibling.ts', true),
  ],
  'geometry imports nothing from src, and every layer may use it': [
    ...LAYERS.map((name) => seed('geometry/bore', `../../src/${name}/x.ts`, false)),
    ...LAYERS.map((name) => seed('geometry/kernel', `../../src/${name}/x.ts`, false)),
    ...LAYERS.map((name) => seed(`src/${name}`, '../../geometry/bore/x.ts', true)),
  ],
  'packages, Node, preset data, tests and the build stay where they belong': [
    ...Object.entries(OUTSIDE).flatMap(([what, who]) =>
      FOLDERS.map((folder) => seed(folder, what, who.includes(folder))),
    ),
    seed('src/checks/deeper', '../../../presets/cells.json', false),
    seed('src/checks/deeper', '../../presets/x.ts', true),
  ],
  'the scripts that run before an installation and the layers know nothing of each other': [
    ...LAYERS.map((name) => seed('src/start', `../${name}/x.ts`, false, 'mjs')),
    ...LAYERS.map((name) => seed(`src/${name}`, '../start/run.mjs', false)),
    seed('src/start', 'node:fs', true, 'mjs'),
  ],
  'no form of import is a way round': [
    written('src/checks', 'on demand', `export const later = () => import('../app/x.ts')\n`),
    written('src/checks', 'only a type', `import type { X } from '../app/x.ts'\nexport type Y = X\n`),
    written('src/checks', 'a type in passing', `export type Y = import('../app/x.ts').X\n`),
    written('src/checks', 'passed on', `export * from '../app/x.ts'\n`),
  ],
  'geometry touches neither the page nor the process': [
    written('geometry/bore', 'the page', 'export const width = () => document.body.clientWidth\n'),
    written('geometry/kernel', 'the page', 'export const width = () => document.body.clientWidth\n'),
    written('geometry/bore', 'the process', 'export const folder = () => process.cwd()\n'),
    written('geometry/bore', 'the network', `export const got = () => fetch('x')\n`),
  ],
}
const ANSWERS = ['no-restricted-imports', 'no-restricted-globals', 'prefer-node-protocol', 'consistent-type-imports']

/** Pieces for the rules that look at more than one file or at types, each with the rule that must answer. */
const RULES: { rule: string; files: Record<string, string> }[] = [
  {
    rule: 'import(no-cycle)',
    files: {
      'src/checks/cycle-a.ts': `import { b } from './cycle-b.ts'\nexport const a = (): number => b()\n`,
      'src/checks/cycle-b.ts': `import { a } from './cycle-a.ts'\nexport const b = (): number => a()\n`,
    },
  },
  {
    rule: 'typescript(no-floating-promises)',
    files: { 'src/checks/floating.ts': 'const save = async () => 1\nexport const go = () => {\n  save()\n}\n' },
  },
  {
    rule: 'import(extensions)',
    files: { 'src/checks/extension.ts': `import { a } from './cycle-a'\nexport const c = a\n` },
  },
]

let folder: string
let reported: Map<string, Set<string>>

beforeAll(async () => {
  const root = join(import.meta.dirname, '..', '..')
  folder = mkdtempSync(join(tmpdir(), 'folder-rules-'))
  cpSync(join(root, '.oxlintrc.json'), join(folder, '.oxlintrc.json'))
  // The project's own tsconfig.json names type packages, which are not installed beside the seeds.
  put('tsconfig.json', '{ "compilerOptions": { "strict": true, "noEmit": true } }')
  for (const { file, source } of Object.values(SEEDS).flat()) put(file, source)
  for (const { files } of RULES) for (const [file, source] of Object.entries(files)) put(file, source)
  reported = await lint(root)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('the rules of the folders, each broken on purpose', () => {
  it.each(Object.entries(SEEDS))('%s', (_group, seeds) => {
    const missed = seeds.filter((s) => !s.allowed && !isReported(s.file))
    const accused = seeds.filter((s) => s.allowed && reported.has(s.file))
    expect(missed.map((s) => s.says)).toEqual([])
    expect(accused.map((s) => s.says)).toEqual([])
  })
  it.each(RULES)('reports $rule', ({ rule, files }) => {
    expect(Object.keys(files).every((file) => reported.get(file)?.has(rule))).toBe(true)
  })
})

it('has a rule for every folder of src', () => {
  const folders = readdirSync(join(import.meta.dirname, '..', '..', 'src'), { withFileTypes: true })
  const unknown = folders.filter((f) => !f.isDirectory() || !(LAYERS.includes(f.name) || f.name === 'start'))
  expect(unknown.map((f) => f.name)).toEqual([])
})

function layerSeed(from: string, to: string): Seed {
  const [low, high] = [LEVEL_OF.get(from) ?? 0, LEVEL_OF.get(to) ?? 0]
  const bothOnTop = low === LEVELS.length - 1 && high === low
  return seed(`src/${from}`, `../${to}/x.ts`, high <= low && !bothOnTop)
}

function seed(where: string, what: string, allowed: boolean, ending = 'ts'): Seed {
  const file = `${where}/${what.replaceAll(/[^a-z0-9]+/gi, '-')}.${ending}`
  return {
    file,
    source: `import * as it from '${what}'\nexport const seen = it\n`,
    allowed,
    says: `${what} in ${where}`,
  }
}

/** A forbidden thing in its own words, for what is no plain import. */
function written(where: string, says: string, source: string): Seed {
  return { file: `${where}/${says.replaceAll(' ', '-')}.ts`, source, allowed: false, says: `${says}, in ${where}` }
}

function isReported(file: string): boolean {
  return ANSWERS.some((rule) => [...(reported.get(file) ?? [])].some((code) => code.includes(rule)))
}

function put(file: string, source: string) {
  mkdirSync(dirname(join(folder, file)), { recursive: true })
  writeFileSync(join(folder, file), source)
}

/** Lints the seeded folder as `npm test` lints the project: file -> rules that answered. */
function lint(root: string): Promise<Map<string, Set<string>>> {
  const oxlint = join(root, 'node_modules', 'oxlint', 'bin', 'oxlint')
  const args = [oxlint, '--type-aware', '--format', 'json']
  const PATH = [join(root, 'node_modules', '.bin'), process.env.PATH].join(delimiter)
  const options = { cwd: folder, maxBuffer: 1 << 28, env: { ...process.env, PATH } }
  return new Promise((resolve, reject) => {
    execFile(process.execPath, args, options, (_breachesFound, stdout) => {
      try {
        const { diagnostics } = JSON.parse(stdout) as { diagnostics: { filename: string; code: string }[] }
        const byFile = new Map<string, Set<string>>()
        for (const { filename, code } of diagnostics) {
          const file = filename.replaceAll('\\', '/')
          byFile.set(file, (byFile.get(file) ?? new Set()).add(code))
        }
        resolve(byFile)
      } catch {
        reject(new Error(`oxlint gave no report: ${stdout.slice(0, 500)}`))
      }
    })
  })
}
