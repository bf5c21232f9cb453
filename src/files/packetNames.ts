import { allowanceText } from '../making/allowanceText.ts';
import type { Order } from '../making/order.ts';
import { holesEnd } from './partName.ts';
import { safeName } from './safeName.ts';

/** Files of a packet, each by the end of its name. */
const ENDS = {
  step: '.step',
  stl: '_mm.stl',
  threeMf: '.3mf',
  dxf: '_plan.dxf',
  note: '_job-note.pdf',
  drawing: '_drawing.pdf',
  csv: '_dimensions.csv',
  json: '_dimensions.json',
  design: '_design.json',
  manifest: '_manifest.txt',
  zip: '_packet.zip',
} as const;

export type PacketFile = keyof typeof ENDS;

/** Those that show the bridge as it is finished, whatever was ordered for sanding. */
const FINISHED: ReadonlySet<PacketFile> = new Set(['drawing', 'csv', 'json', 'design']);

/** The longest that can follow a design's name, for which its room is kept. */
const LONGEST = '_as-drilled_allowance-0.12_dimensions';

/** A design's name as a packet's files begin with, cut short. @param suffix kept whole at its end */
export function packetName(name: string, suffix = ''): string {
  return safeName(name, suffix + LONGEST).slice(0, -LONGEST.length);
}

/**
 * The names of a packet's files: each says which design, its holes as drilled or as reamed, and whether what it shows has
 * wood left for sanding: `Heron_as-reamed_allowance-0.2.step`, `Heron_as-reamed_finished-size_drawing.pdf`. All differ, and
 * none has more than 100 characters.
 *
 * @param called the design's name, or what it is called among others
 */
export function packetNames(
  called: string,
  { holes, sandingAllowance }: Pick<Order, 'holes' | 'sandingAllowance'>,
): Readonly<Record<PacketFile, string>> {
  const name = packetName(called);
  const entries = Object.entries(ENDS) as [PacketFile, string][];
  return Object.fromEntries(
    entries.map(([file, end]) => {
      const allowance = sizeEnd(FINISHED.has(file), sandingAllowance);
      return [file, `${name}${holesEnd(holes)}_${allowance}${end}`];
    }),
  ) as Record<PacketFile, string>;
}

/** Beside files with wood left for sanding, those of the finished bridge say so. */
function sizeEnd(finished: boolean, left: number): string {
  if (left === 0) return 'no-allowance';
  return finished ? 'finished-size' : `allowance-${allowanceText(left)}`;
}
