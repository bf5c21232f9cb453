import type { Design } from '../../design/design.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { sagitta } from '../../trade/sagitta.ts';
import { type Figure, fixed } from '../figures/figure.ts';
import { sourced } from './sourced.ts';

const mm = (value: number) => `${fixed(value, 2)} mm`;

/** The heights on the centre line, and the piece that the saddle is cut from. */
export function heightFigures(
  design: Design,
  { height, depth, solved }: Fit,
  { saddle }: FitReport,
): readonly Figure[] {
  const { saddle: field, strings } = design;
  const { blank } = saddle;
  const by = (path: keyof Fit['solved'], other: string): Partial<Figure> =>
    solved[path].by === 'set' ? { note: `set by hand; solved: ${mm(solved[path].solved)}` } : { note: other };
  return [
    {
      label: 'Frets’ plane over the soundboard',
      value: fixed(height.fretPlane, 2),
      unit: 'mm',
      ...sourced(
        ['string-height'],
        `p, on the centre line at the saddle, ${design.action.planeBy === 'straightedge' ? 'by straightedge' : 'from how the neck is set'}`,
      ),
      path: 'action.planeBy',
    },
    {
      label: 'Fretboard falls to the outer strings',
      value: fixed(sagitta(height.fretboardRadius, strings.spread), 2),
      unit: 'mm',
      ...sourced(['sagitta'], `R ${fixed(height.fretboardRadius, 1)}, c ${fixed(strings.spread, 1)} mm`),
      path: 'guitar.fretboardRadius',
    },
    {
      label: 'Bridge thickness',
      value: fixed(height.thickness, 2),
      unit: 'mm',
      ...sourced(
        ['string-height', 'I3'],
        `p ${fixed(height.fretPlane, 2)} + hₛ ${fixed(height.overFrets, 2)} − showing ${fixed(height.showing, 2)} mm at the middle`,
      ),
      ...by('top.thickness', 'solved from the showing'),
      path: 'top.thickness',
    },
    {
      label: 'Slot depth',
      value: fixed(field.depth, 2),
      unit: 'mm',
      ...sourced(
        ['half-rule'],
        `half in needs ${mm(depth.forHalf)}; the wood wanted under it allows ${mm(depth.forWood)}`,
      ),
      ...by(
        'saddle.depth',
        depth.both ? 'solved, half of the saddle in the wood' : 'solved, as deep as the wood allows',
      ),
      path: 'saddle.depth',
    },
    ...(blank
      ? [
          {
            label: 'Saddle blank',
            value: `${fixed(blank.length.most, 1)} × ${fixed(blank.height, 1)} × ${fixed(blank.thickness.most, 2)}`,
            unit: 'mm',
            ...sourced(
              ['saddle-blank'],
              `length ${fixed(blank.length.least, 1)} to ${fixed(blank.length.most, 1)}, thickness ${fixed(blank.thickness.least, 2)} to ${fixed(blank.thickness.most, 2)}; ${mm(blank.finished)} high when finished`,
            ),
            path: 'saddle.slotLength',
          },
        ]
      : []),
  ];
}
