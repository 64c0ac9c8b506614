import { z } from 'zod'

/** Ten metres, or as many degrees: far past anything in a hilt. What lies beyond would only keep the program busy. */
const farthest = 10_000

const beyond = `${-farthest} to ${farthest}§Give a size of a hilt, in mm or degrees.`

/** A number in mm or degrees where no spread is asked for. */
export const number = z
  .number({ error: 'a number§Give a plain number in mm or degrees.' })
  .min(-farthest, { error: beyond })
  .max(farthest, { error: beyond })

/** One that cannot lie below nothing. */
export const notNegative = number.min(0, { error: '0 or more§Give a size, never a negative one.' })
