import { Command, CommanderError } from 'commander'
import about from '../../package.json' with { type: 'json' }
import type { CalcOptions } from './commands/calc.ts'
import type { CheckOptions } from './commands/check.ts'
import type { SledOptions } from './commands/sled.ts'
import { exit, exitHelp } from './exit.ts'
import type { Io } from './io.ts'

/**
 * Runs one command line and gives its exit code. Each command's code is loaded when it is called: help needs none of
 * the program, and only `sled` needs the solid kernel.
 */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  let code: number = exit.done
  const program = commands(io, (c) => {
    code = c
  })
  if (argv.length === 0) {
    io.err(program.helpInformation())
    return exit.wrongUsage
  }
  try {
    await program.parseAsync(argv, { from: 'user' })
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error
    return error.exitCode === 0 ? exit.done : exit.wrongUsage
  }
  return code
}

/** The commands, each handing its exit code to `done`. */
function commands(io: Io, done: (code: number) => void): Command {
  const program = new Command('sledwright')
  program
    .description(
      'What fits inside a prop hilt, by how much, and how sure that is; and the printable sled that carries it.',
    )
    .version(about.version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .configureOutput({ writeOut: io.out, writeErr: io.err, outputError: (text, write) => write(sentence(text)) })
    .configureHelp({ helpWidth: io.width })
    .exitOverride()
    .showHelpAfterError('Help: sledwright --help, or sledwright COMMAND --help.')
    .addHelpText('after', `\n${exitHelp}\n\nTo try it: sledwright demo pier-lantern | sledwright check -`)

  command(program, 'check', 'judge a project: clear, unsure or clash, and why')
    .argument('<project>', 'the project file, or - to read it from standard input')
    .option('--json', 'print the whole report as JSON')
    .option('--full', 'give reasons, limits and shares of what is clear, too')
    .option('--state <name>', 'look at this one state of the hilt, for example closed')
    .option('--hilt <id>', 'look at this hilt, where the project holds several')
    .addHelpText('after', `\n${exitHelp}`)
    .action(async (path: string, options: CheckOptions) =>
      done(await (await import('./commands/check.ts')).check(path, options, io)),
    )

  command(program, 'sled', 'write the sled to be printed: STL, 3MF and a report')
    .argument('<project>', 'the project file, or - to read it from standard input')
    .requiredOption('--out <folder>', 'the folder to write to; it is made where it is missing')
    .option('--stl', 'write STL, one file a printed body; STL and 3MF where neither is named')
    .option('--3mf', 'write 3MF, one file a sled, with all its bodies')
    .option('--layout <name>', 'printed: ready for the bed; assembled: as it lies in the hilt', 'printed')
    .option('--force', 'write in spite of a clash; UNPROVEN then stands in the names')
    .option('--hilt <id>', 'take this hilt, where the project holds several')
    .action(async (path: string, options: SledOptions) =>
      done(await (await import('./commands/sled.ts')).sled(path, options, io)),
    )
    .addHelpText('after', '\nOn a clash, or when the solid fails its gate, nothing is written and the exit code is 2.')

  command(program, 'demo', 'list the demo projects, or print one')
    .argument('[name]', 'the demo to print; without it their names are listed')
    .action(async (name: string | undefined) => done((await import('./commands/demo.ts')).demo(name, io)))

  command(program, 'calc', 'one rule of the trade, from numbers alone')
    .argument('[rule]', 'the name of the rule')
    .argument('[inputs...]', 'its inputs as name=value; lengths may carry a unit: depth=1.5in')
    .option('--list', 'list the rules with what they take and give, or the one that is named')
    .option('--json', 'print JSON')
    .action(async (name: string | undefined, inputs: string[], options: CalcOptions) =>
      done((await import('./commands/calc.ts')).calc(name, inputs, options, io)),
    )

  command(program, 'presets', 'list the parts, threads, drills, wires, materials and tools it knows')
    .argument('[kind]', 'only this kind, for example cell')
    .option('--json', 'print JSON')
    .action(async (kind: string | undefined, options: { json?: boolean }) =>
      done((await import('./commands/presets.ts')).presets(kind, options, io)),
    )

  command(program, 'checks', 'list what a project is checked for')
    .option('--json', 'print JSON')
    .action(async (options: { json?: boolean }) => done((await import('./commands/checks.ts')).checks(options, io)))

  command(program, 'schema', 'print the JSON Schema of a project file').action(async () =>
    done((await import('./commands/schema.ts')).schema(io)),
  )
  return program
}

/** What was typed wrong, without the label that it is an error. */
function sentence(text: string): string {
  const said = text.replace(/^error: /, '')
  return said.charAt(0).toUpperCase() + said.slice(1)
}

/** A command that answers as the program does: same streams, no exit of its own, nothing left over on the line. */
function command(program: Command, name: string, what: string): Command {
  return program.command(name).description(what).helpOption('-h, --help', 'print this help').allowExcessArguments(false)
}
