/** Where one can go from a page that leads no further. */
export function WaysOn() {
  return (
    <nav className="ways-on" aria-label="Ways on">
      <a className="button" href="#quick">
        Quick check
      </a>
      <a className="button" href="#jobs">
        Your jobs
      </a>
      <a className="button" href="#new">
        New job
      </a>
    </nav>
  )
}
