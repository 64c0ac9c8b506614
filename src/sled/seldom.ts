/*
 * What only whole jobs have: fetched as one by `fetchRare`, and named nowhere else but here. A quick check is a cage in
 * one piece for round cells and speakers and flat boards, without windows, keys, towers, rods, splits or letters, and
 * nothing sticks into its bore.
 */
export { roomAside } from '../body/room-aside.ts'
export { discsOnRods } from './constructions/discs-on-rods.ts'
export { openCradle } from './constructions/open-cradle.ts'
export { bulkheadItems } from './features/bulkheads.ts'
export { keyItems } from './features/keys.ts'
export { markItems } from './features/marks.ts'
export { rodBodies, rodItems, rodsOf } from './features/rods.ts'
export { splitBodies } from './features/splits.ts'
export { towerItems } from './features/towers.ts'
export { inLine, isStopped } from './in-line.ts'
export { boardLips } from './nests/board-lips.ts'
export { cellCradle } from './nests/cell-cradle.ts'
export { ejectionNotch } from './nests/ejection-notch.ts'
export { sectorRecess } from './nests/sector-recess.ts'
export { serviceFace } from './nests/service-face.ts'
export { typedChannel } from './nests/typed-channel.ts'
export { windowItems } from './nests/window.ts'
