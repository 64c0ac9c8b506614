/** What the command leaves behind for a script: the verdict, or why there is none. From 64 on as in BSD's sysexits. */
export const exit = {
  clear: 0,
  unsure: 1,
  clash: 2,
  /** A command that ends as asked and gives no verdict. */
  done: 0,
  wrongUsage: 64,
  badProject: 65,
  bug: 70,
} as const

/** The same for `--help`. */
export const exitHelp = `Exit codes:
  0   clear: it holds for every value the sizes may have (or the command did what it was asked)
  1   unsure: it depends on something that is not measured well enough yet
  2   clash: it cannot hold, whatever is measured; or the sled was refused
  64  wrong usage: a command, option or input that there is not
  65  the project or a file cannot be used; everything wrong with it is listed
  70  a fault of the program itself`
