import { demos } from '../../job/demos/index.ts'

/** Jobs to look at first: invented, and said to be so. */
export function DemoList() {
  return (
    <ul className="demo-list">
      {demos.map(({ name, title }) => (
        <li key={name}>
          <a href={`#demo/${name}`}>{title}</a>
        </li>
      ))}
    </ul>
  )
}
