/** Opens a box that is about to be drawn and puts the focus into it. */
export function openSoon(id: string): void {
  let tries = 0
  const attempt = () => {
    const box = document.getElementById(id)
    if (box instanceof HTMLDetailsElement) {
      box.open = true
      const first = box.querySelector('input, select')
      if (first instanceof HTMLElement) first.focus()
      box.scrollIntoView({ block: 'nearest' })
    } else if ((tries += 1) < 30) requestAnimationFrame(attempt)
  }
  requestAnimationFrame(attempt)
}
