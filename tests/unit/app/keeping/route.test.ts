import { describe, expect, it } from 'vitest'
import { routeOf } from '../../../../src/app/keeping/route.ts'

describe('addresses', () => {
  it('name the list, a new job, a kept one, a demo, a link and a quick check', () => {
    expect(routeOf('jobs')).toEqual({ kind: 'jobs' })
    expect(routeOf('new')).toEqual({ kind: 'new' })
    expect(routeOf('job/4446f9c63215da7e')).toEqual({ kind: 'job', id: '4446f9c63215da7e' })
    expect(routeOf('demo/pier-lantern')).toEqual({ kind: 'demo', name: 'pier-lantern' })
    expect(routeOf('link/1ab/c')).toEqual({ kind: 'link', data: '1ab/c' })
    expect(routeOf('grow/%7B%22a%22%3A1%7D')).toEqual({ kind: 'grow', text: '{"a":1}' })
  })

  for (const address of ['job', 'job/', 'jobs/1', 'new/1', 'job/../x', 'demo/A B', 'link/', 'grow/%', 'elsewhere', '/'])
    it(`leads nowhere from ${address}`, () => {
      expect(routeOf(address)).toEqual({ kind: 'nothing' })
    })
})
