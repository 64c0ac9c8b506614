/** Said wherever a cell is chosen; by itself, so that the first page brings no other caution with it. */
export const cellCaution =
  'A lithium cell that is shorted, pinched or overcharged can burn: keep metal and sharp edges off its wrap, fit a fuse, and follow its data sheet and your local rules.'
