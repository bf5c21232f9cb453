import type { Design } from '../../design/design.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { fixed } from '../figures/figure.ts';
import { type Column, signed } from './column.ts';
import { sourced } from './sourced.ts';

/** Set-backs and what the straight slot leaves over. */
export function intonationColumns(
  { saddle, guitar }: Design,
  { slot, strings }: Fit,
  { crowns }: FitReport,
): readonly Column[] {
  const { residuals, wanted } = slot;
  const setup = (i: number) => {
    const one = wanted[i]?.setup;
    return one
      ? `S ${fixed(guitar.scale, 2)} mm, h₀ ${fixed(one.heights.nut, 3)}, hₛ ${fixed(one.heights.saddle, 3)} mm, κ ${fixed(one.stretch, 1)}, α ${one.clampedEnds}`
      : '';
  };
  return [
    {
      key: 'asked',
      head: 'asked',
      unit: 'mm',
      name: 'Set-back that the string asks for',
      values: wanted.map(({ saddleMm, measured }) => `${fixed(saddleMm, 2)}${measured ? '*' : ''}`),
      sourced: (i) =>
        wanted[i]?.measured
          ? { formula: 'Measured by you: it goes before the computed one.', source: 'Your own measure.' }
          : sourced(['I4', 'I2', 'I3'], setup(i)),
      path: 'strings.setbacks',
    },
    {
      key: 'off',
      head: 'off slot',
      unit: 'mm',
      name: 'Residual: what it asks for beyond the straight slot',
      values: residuals.map(({ residualMm }) => signed(residualMm, 2)),
      sourced: (i) =>
        sourced(
          ['I4'],
          `asked ${fixed(wanted[i]?.saddleMm ?? 0, 2)} − slot there ${fixed(residuals[i]?.onSlotMm ?? 0, 2)} mm; positive is away from the nut`,
        ),
      path: 'saddle.line',
    },
    {
      key: 'cents',
      head: '12th',
      unit: '¢',
      name: 'Cents at the 12th fret on the slot’s middle',
      values: residuals.map(({ cents12 }) => signed(cents12, 1)),
      sourced: (i) => sourced(['I2'], `set-back ${fixed(residuals[i]?.onSlotMm ?? 0, 2)} mm; ${setup(i)}`),
      path: 'saddle.rule',
    },
    {
      key: 'filed',
      head: 'filed',
      unit: 'mm',
      name: 'How far the crown is filed from the slot’s middle',
      values: crowns.map(({ filed }) => signed(filed, 2)),
      amiss: residuals.map(({ filable }) => saddle.filed === 'each' && !filable),
      sourced: (i) =>
        sourced(
          ['I4'],
          `asked ${signed(residuals[i]?.residualMm ?? 0, 2)}; at most half of ${fixed(saddle.slotWidth, 2)} less ${fixed(saddle.crownMargin, 2)} mm`,
        ),
      path: 'saddle.filed',
    },
    {
      key: 'filedCents',
      head: '12th',
      unit: '¢',
      name: 'Cents at the 12th fret with the filed crown',
      values: crowns.map(({ cents }) => signed(cents.filed[11] ?? 0, 1)),
      sourced: (i) =>
        sourced(
          ['I2'],
          `${strings[i]?.note ?? ''}: set-back ${fixed(crowns[i]?.setback ?? 0, 2)} mm; ${setup(i)}`,
        ),
      path: 'saddle.crownMargin',
    },
  ];
}
