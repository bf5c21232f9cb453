import { acceptDesign } from '../../../src/design/acceptDesign.ts';
import { initialDesign } from '../../../src/design/initial.ts';
import { fitReport } from '../../../src/trade/fit/fitReport.ts';
import { type Changes, change } from '../../support/change.ts';

/** The initial design, everything solved, with some fields changed: accepted, and with its fit's report. */
export function fitOf(changes: Changes = {}) {
  const accepted = acceptDesign(change(initialDesign(), changes));
  return { ...accepted, report: fitReport(accepted.design, accepted.curves, accepted.fit) };
}

/** Designs whose pictures differ. */
export const someFits: Readonly<Record<string, Changes>> = {
  usual: {},
  'left-handed': { 'guitar.hand': 'left' },
  'tilted slot, channels': { 'saddle.tilt': 8, 'pins.channel': 'ramp', 'pins.channelDepth': 3 },
  'twelve in pairs, two rows': {
    'strings.count': 12,
    'strings.courses': 'pairs',
    'strings.notes': ['E4', 'E4', 'B3', 'B3', 'G3', 'G4', 'D3', 'D4', 'A2', 'A3', 'E2', 'E3'],
    'strings.diameters': [0.25, 0.25, 0.36, 0.36, 0.58, 0.2, 0.76, 0.3, 1.0, 0.43, 1.2, 0.69],
    'strings.cores': [0.25, 0.25, 0.36, 0.36, 0.27, 0.2, 0.34, 0.3, 0.38, 0.43, 0.42, 0.3],
    'strings.wraps': Array(12).fill(8800),
    'strings.setbacks': Array(12).fill(''),
    'action.cents': Array(12).fill(''),
    'pins.rows': 'two',
    'pins.spread': 60,
    'pins.drill': 4,
    'pins.mouth': 4.8,
    'pins.bevelDiameter': 5.5,
    'pins.behindSlot': 11,
  },
  'measured set-backs, set by hand': {
    'strings.setbacks': ['', 3, '', '', '', 7],
    'saddle.angleBy': 'set',
    'saddle.angle': -1.5,
  },
};
