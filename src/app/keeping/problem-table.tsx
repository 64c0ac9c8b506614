import type { Problem } from '../../problem/problem.ts'

/** What is wrong with a file or a link: where, what stands there, what may stand there, and what to do. */
export function ProblemTable({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <table className="problem-table">
      <thead>
        <tr>
          <th scope="col">Where</th>
          <th scope="col">Found</th>
          <th scope="col">Allowed</th>
          <th scope="col">What to do</th>
        </tr>
      </thead>
      <tbody>
        {problems.map((p) => (
          <tr key={`${p.code} ${p.path}`}>
            <th scope="row">{p.path === '' ? 'the whole' : p.path}</th>
            <td data-of="Found">{p.got}</td>
            <td data-of="Allowed">{p.limit}</td>
            <td data-of="What to do">{p.hint}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
