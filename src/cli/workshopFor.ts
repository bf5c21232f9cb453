import { readWorkshop, usualWorkshop, type Workshop } from '../making/workshop.ts';
import { inWorkshop } from './inWorkshop.ts';
import { readJsonAt } from './readJsonAt.ts';

/**
 * The workshop in a file, or the usual one, by the slot's width (mm) of the design that is to be made in it: what the file
 * leaves out is as usual, the cutter the widest usual one that the slot takes. Throws `FileError`, and `UseError` for
 * values that no workshop has.
 */
export async function workshopFor(file: string | undefined): Promise<(slotWidth: number) => Workshop> {
  if (file === undefined) return usualWorkshop;
  const json = await readJsonAt('--workshop', file);
  inWorkshop(file, () => readWorkshop(json));
  return (slotWidth) =>
    readWorkshop({ cutter: usualWorkshop(slotWidth).cutter, ...(json as Readonly<Record<string, unknown>>) });
}
