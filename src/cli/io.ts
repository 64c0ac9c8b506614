/** Where the command reads and writes. The program gets the process's own; nothing below knows of the process. */
export interface Io {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  readonly stdin: AsyncIterable<Uint8Array | string> & { readonly isTTY?: boolean }
  /** Colour may be used. It only ever repeats what a word says. */
  readonly colour: boolean
  /** Columns of a line. */
  readonly width: number
}

/** Longest line written, columns: what still reads well. */
const widest = 100
/** Below this a narrow terminal wraps by itself. */
const narrowest = 60

/** The streams of this process. A reader that goes away (`| head`) ends the output, not in an error. */
export function processIo(): Io {
  for (const stream of [process.stdout, process.stderr])
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error
    })
  const terminal = process.stdout.isTTY === true
  const width = terminal ? Math.min(widest, Math.max(narrowest, process.stdout.columns || widest)) : widest
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    stdin: process.stdin,
    colour: terminal && !process.env['NO_COLOR'] && process.env['TERM'] !== 'dumb',
    width,
  }
}
