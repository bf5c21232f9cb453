import { spawnSync } from 'node:child_process';

/** A page as grey dots. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  /** How much ink is on a dot, 0 to 1; dots count from the upper left. */
  ink(x: number, y: number): number;
}

/** Part of a page in dots: its left upper corner and size. */
type Crop = readonly [x: number, y: number, width: number, height: number];

/** A page of a PDF file drawn by pdftoppm. Page counts from 1; 254 dpi are 10 dots a millimetre. */
export function raster(file: string, page: number, dpi: number, crop?: Crop): Raster {
  const where = crop ? ['-x', '-y', '-W', '-H'].flatMap((flag, i) => [flag, String(crop[i])]) : [];
  const args = ['-gray', '-r', String(dpi), '-f', String(page), '-l', String(page), ...where, file];
  const { status, stdout, stderr } = spawnSync('pdftoppm', args, { maxBuffer: 1e9 });
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stdout.subarray(0, 64).toString('latin1'));
  if (status !== 0 || !head) throw new Error(`pdftoppm ${args.join(' ')}: ${stderr}`);
  const [width, height, start] = [Number(head[1]), Number(head[2]), head[0].length];
  return { width, height, ink: (x, y) => 1 - (stdout[start + y * width + x] as number) / 255 };
}

/** The stretches of ink along a line of dots, by where they begin and how long they are; half-grey dots count in part. */
export function inkRuns(inks: readonly number[]): readonly { from: number; length: number }[] {
  const runs: { from: number; length: number }[] = [];
  inks.forEach((ink, i) => {
    const last = runs[runs.length - 1];
    if (ink < 0.02) return;
    if (last && (inks[i - 1] ?? 0) >= 0.02) last.length += ink;
    else runs.push({ from: i + 1 - ink, length: ink });
  });
  return runs;
}
