import type { Paper } from '../../sheets/sheet.ts';
import type { Zoom } from '../store/state.ts';

/** CSS’s millimetre on the screen, px. */
const PX_PER_MM = 96 / 25.4;
/** Board that is left free round a fitted page, px on each side. */
const ROUND = 14;
/** How far a sheet can be taken from its own size. */
const [LEAST, MOST] = [0.2, 6];
const STEP = 1.25;

interface Room {
  readonly width: number;
  readonly height: number;
}

/** How many times its own size a sheet is shown in a room (px); before the room is known, at its own. */
export function zoomOf(zoom: Zoom, { width, height }: Paper, room: Room | undefined): number {
  if (typeof zoom === 'number') return zoom;
  if (!room) return 1;
  const byWidth = (room.width - 2 * ROUND) / (width * PX_PER_MM);
  const byHeight = (room.height - 2 * ROUND) / (height * PX_PER_MM);
  return within(zoom === 'width' ? byWidth : Math.min(byWidth, byHeight));
}

/** A step nearer (1) or farther (−1). */
export function steppedZoom(zoom: number, step: 1 | -1): number {
  return within(zoom * STEP ** step);
}

function within(zoom: number): number {
  return Math.min(MOST, Math.max(LEAST, zoom));
}
