import { fretPlace } from '../../../models/curves/fretboard.ts';
import type { Design } from '../../design/design.ts';
import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { sagitta } from '../../trade/sagitta.ts';
import type { Figure } from '../figures/figure.ts';
import { type Sourced, sourced } from './sourced.ts';

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
      ...planeSource(design),
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
      ...sourced(['string-height', 'I3'], thicknessInputs(height, solved['top.thickness'])),
      ...by('top.thickness', 'solved from the showing'),
      path: 'top.thickness',
    },
    {
      label: 'Slot depth',
      value: fixed(field.depth, 2),
      unit: 'mm',
      ...sourced(
        ['half-rule'],
        `holding the saddle needs ${mm(depth.forHold)}; the wood wanted under it allows ${mm(depth.forWood)}`,
      ),
      ...by(
        'saddle.depth',
        depth.both ? 'solved, enough of the saddle in the wood' : 'solved, as deep as the wood allows',
      ),
      path: 'saddle.depth',
    },
    ...(blank
      ? [
          {
            label: 'Saddle blank',
            value: `${fixed(blank.length.most, 1)} × ${fixed(blank.height, 2)} × ${fixed(blank.thickness.most, 2)}`,
            unit: 'mm',
            ...sourced(
              ['saddle-blank'],
              `length ${fixed(blank.length.least, 1)} to ${fixed(blank.length.most, 1)}, thickness ${fixed(blank.thickness.least, 2)} to ${fixed(blank.thickness.most, 2)}; ${mm(blank.finished)} high when finished, so at least ${mm(blank.height)} to shape it from`,
            ),
            path: 'saddle.slotLength',
          },
        ]
      : []),
  ];
}

/** p, on the centre line at the saddle: a measure, or worked out from how the neck is set. */
function planeSource({ action, guitar, saddle }: Design): Sourced {
  if (action.planeBy === 'straightedge')
    return {
      formula: 'p, on the centre line at the saddle: measured by straightedge.',
      source: 'Your own measure.',
    };
  const joint = fretPlace(guitar.scale, action.neckJoint);
  return sourced(
    ['frets-plane'],
    `z_b ${fixed(action.jointHeight, 2)} mm at fret ${action.neckJoint}; S ${fixed(guitar.scale + saddle.setback, 2)}, x_b ${fixed(joint, 2)} mm; θ ${fixed(action.neckAngle, 2)}°; rise ${fixed(action.domeRise, 2)} mm`,
  );
}

/** The sum that makes the thickness, or, set by hand, the one that would: with the showing that was asked for then. */
function thicknessInputs(
  { fretPlane, overFrets, showing }: Fit['height'],
  { by, solved }: Fit['solved']['top.thickness'],
): string {
  const sum = (shows: number) =>
    `p ${fixed(fretPlane, 2)} + hₛ ${fixed(overFrets, 2)} − showing ${fixed(shows, 2)}`;
  return by === 'set'
    ? `set by hand; solved, it is ${sum(fretPlane + overFrets - solved)} = ${mm(solved)} at the middle`
    : `${sum(showing)} mm at the middle`;
}
