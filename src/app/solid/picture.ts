/** A picture of the solid on the colour of the sheet, with a line that says what it is, as a PNG. */
export async function pictureOf(canvas: HTMLCanvasElement, caption: string): Promise<Blob | undefined> {
  const sheet = document.createElement('canvas')
  const line = Math.max(28, Math.round(canvas.width / 32))
  sheet.width = canvas.width
  sheet.height = canvas.height + line
  const pen = sheet.getContext('2d')
  if (!pen) return undefined
  const look = getComputedStyle(canvas.closest('.solid-canvas') ?? document.body)
  pen.fillStyle = look.backgroundColor
  pen.fillRect(0, 0, sheet.width, sheet.height)
  pen.drawImage(canvas, 0, 0)
  pen.fillStyle = look.color
  pen.font = `${Math.round(line * 0.5)}px ${look.fontFamily}`
  pen.textBaseline = 'middle'
  pen.fillText(caption, line * 0.5, canvas.height + line / 2, sheet.width - line)
  return new Promise((resolve) => sheet.toBlob((blob) => resolve(blob ?? undefined), 'image/png'))
}
