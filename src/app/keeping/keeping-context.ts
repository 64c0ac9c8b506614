import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Standing } from './keeper.ts'
import type { OnTable } from './use-found.ts'

export const KeepingContext = createContext<OnTable | undefined>(undefined)

/** The job on the table with what keeps it. */
export function useKeeping(): OnTable {
  const keeping = useContext(KeepingContext)
  if (!keeping) throw new Error('only in the work room')
  return keeping
}

export const useStanding = (): Standing => useStore(useKeeping().keeper.standing)
