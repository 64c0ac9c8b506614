import { expect, it } from 'vitest'
import { fetchedOnce } from '../../../src/worker/fetched-once.ts'

it('fetches once, and again only what did not come', async () => {
  let tries = 0
  const fetched = fetchedOnce(() => (++tries === 1 ? Promise.reject(new Error('offline')) : Promise.resolve(tries)))
  await expect(fetched()).rejects.toThrow('offline')
  expect(await Promise.all([fetched(), fetched()])).toEqual([2, 2])
  expect(await fetched()).toBe(2)
})
