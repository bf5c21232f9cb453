import type { Design } from '../../design/design.ts';
import { fixed, signed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import type { Column } from './column.ts';
import { sourced } from './sourced.ts';

/** Set-backs and what the straight slot leaves over. */
export function intonationColumns(
  { saddle, guitar, action }: Design,
  { slot, strings }: Fit,
  { crowns }: FitReport,
): readonly Column[] {
  const { residuals, wanted } = slot;
  const setup = (i: number) => {
    const { setup: one, nutMm = 0 } = wanted[i] ?? {};
    const nut = nutMm === 0 ? '' : `, nut’s set-back ${signed(nutMm, 2)} mm`;
    return one
      ? `S ${fixed(guitar.scale, 2)} mm, h₀ ${fixed(one.heights.nut, 3)}, hₛ ${fixed(one.heights.saddle, 3)} mm, κ ${fixed(one.stretch, 1)}, α ${one.clampedEnds}${nut}`
      : '';
  };
  const nut: Column = {
    key: 'nut',
    head: 'nut',
    unit: 'mm',
    name: 'Nut’s set-back; negative is toward the saddle',
    values: wanted.map(({ nutMm }) => signed(nutMm, 2)),
    sourced: (i) =>
      action.nut === 'set'
        ? { formula: 'Set by hand, the same for every string.', source: 'Your own number.' }
        : sourced(
            ['I4', 'I2', 'I3'],
            `nut and saddle together, least squares over frets 1 to 12; ${setup(i)}`,
          ),
    path: action.nut === 'set' ? 'action.nutSetback' : 'action.nut',
  };
  return [
    ...(action.nut === 'none' ? [] : [nut]),
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
          `asked ${fixed(wanted[i]?.saddleMm ?? 0, 2)} − crown on the slot’s middle ${fixed(residuals[i]?.onSlotMm ?? 0, 2)} mm; positive is away from the nut`,
        ),
      path: 'saddle.line',
    },
    {
      key: 'cents',
      head: 'straight',
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
      head: 'filed',
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
