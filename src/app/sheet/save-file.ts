/** Hands a file to the browser's downloads. */
export function saveFile(name: string, bytes: Uint8Array): void {
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: 'application/octet-stream' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // Some browsers read the address only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
