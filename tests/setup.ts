import { fetchRare } from '../src/checks/rare.ts'

// What the command line and the worker wait for before they answer.
await fetchRare()
