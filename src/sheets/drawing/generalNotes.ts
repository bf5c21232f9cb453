import type { AcceptedDesign } from '../../design/acceptDesign.ts';
import { ISO_2768_M } from '../../trade/tolerances.ts';
import type { PapersOptions } from '../sheetOptions.ts';
import { isTapered } from '../views/isTapered.ts';
import { sectionPin } from '../views/sectionPin.ts';

/** What holds for the whole drawing. */
export function generalNotes(
  { curves }: AcceptedDesign,
  { units, holes }: Pick<PapersOptions, 'units' | 'holes'>,
): readonly string[] {
  const { edge } = curves;
  const drawn = isTapered(sectionPin(curves), holes) ? 'reamed' : 'drilled';
  const limits = ISO_2768_M.map(([most, off]) => `to ${most} ±${off}`).join(', ');
  const inches = ISO_2768_M.map(([most, off]) => `to ${inch(most)} ±${inch(off)}`).join(', ');
  return [
    units === 'mm'
      ? 'Dimensions in millimetres, finished sizes: no sanding allowance in them.'
      : 'Dimensions in inches, finished sizes: no sanding allowance in them. Fractions are exact, decimals are rounded to 0.001.',
    `General tolerance ISO 2768-m: ${limits} mm${units === 'in' ? `; in inches ${inches}` : ''}. Own tolerances stand beside their dimensions; those of the pins’ places are each pin’s own and don’t add up.`,
    `Pin holes are drawn as ${drawn}. Sections A–A and B–B are on the next sheet. Outline and top are symmetric about the centre line.`,
    'Thickness is measured on the centre line, at the slot’s middle, from the glue plane to the uncut top.',
    ...(edge.kind === 'none' ? ['Top edges left square.'] : []),
  ];
}

const inch = (mm: number) => (mm / 25.4).toFixed(3);
