import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Loads, StringLoad } from '../../trade/fit/loads.ts';
import type { FormulaId } from '../../trade/formulas.ts';
import type { Column } from '../fit/column.ts';
import { sourced } from '../fit/sourced.ts';
import { percent } from './figure.ts';
import { whyNoLoad } from './whyNoLoad.ts';

/** How one number of a string's load is told. */
interface Told extends Pick<Column, 'key' | 'head' | 'unit' | 'name' | 'path'> {
  readonly formula: FormulaId;
  readonly of: (one: StringLoad) => number;
  readonly inputs: (one: StringLoad) => string;
}

const SADDLE: readonly Told[] = [
  {
    key: 'onSaddle',
    head: 'on saddle',
    unit: 'N',
    name: 'Load on the saddle',
    formula: 'B2',
    of: ({ saddle }) => saddle.resultant,
    inputs: ({ saddle }) =>
      `${fixed(saddle.down, 1)} N down and ${fixed(saddle.forward, 1)} N forward, together`,
    path: 'pins.behindSlot',
  },
  {
    key: 'down',
    head: 'down',
    unit: 'N',
    name: 'Load down',
    formula: 'B3',
    of: ({ saddle }) => saddle.down,
    inputs: ({ saddle }) => `V ${fixed(saddle.down, 2)} N`,
    path: 'pins.behindSlot',
  },
  {
    key: 'forward',
    head: 'forward',
    unit: 'N',
    name: 'Load forward, toward the nut',
    formula: 'B3',
    of: ({ saddle }) => saddle.forward,
    inputs: ({ saddle }) => `H ${fixed(saddle.forward, 2)} N`,
    path: 'pins.behindSlot',
  },
];

const wallInputs = ({ walls, wall }: StringLoad) =>
  `d ${fixed(wall.height, 2)} mm; the string tips its saddle ${walls.tips}`;

const WOOD: readonly Told[] = [
  {
    key: 'front',
    head: 'front wall',
    unit: 'N',
    name: 'Load on the slot’s front wall',
    formula: 'B7',
    of: ({ walls }) => walls.front,
    inputs: wallInputs,
    path: 'saddle.depth',
  },
  {
    key: 'back',
    head: 'back wall',
    unit: 'N',
    name: 'Load on the slot’s back wall',
    formula: 'B7',
    of: ({ walls }) => walls.back,
    inputs: wallInputs,
    path: 'saddle.depth',
  },
  {
    key: 'stress',
    head: 'stress',
    unit: 'MPa',
    name: 'Stress in the slot’s front wall',
    formula: 'B8',
    of: ({ wallStressMPa }) => wallStressMPa,
    inputs: ({ walls, wall }) =>
      `F ${fixed(walls.tips === 'forward' ? walls.front : 0, 1)} N, a ${fixed(wall.height, 2)} mm, s ${fixed(wall.share, 2)} mm, t ${fixed(wall.thickness, 2)} mm`,
    path: 'footprint.slotBehindFront',
  },
  {
    key: 'bearing',
    head: 'pin hole',
    unit: 'MPa',
    name: 'Pin bearing',
    formula: 'pin-bearing',
    of: ({ bearingMPa }) => bearingMPa,
    inputs: ({ bearingMPa }) => `${fixed(bearingMPa, 3)} MPa on the front of the hole, as reamed`,
    path: 'pins.mouth',
  },
];

/** The reference design's loads, by its name. */
interface OfReference {
  readonly name: string;
  readonly loads: Loads;
}

/** What each string does to the saddle, and to slot and pin hole. One that the saddle doesn't bear has a dash, and why. */
export function loadColumns(loads: Loads, report: FitReport, reference: OfReference) {
  const column = ({ formula, of, inputs, ...told }: Told): Column => ({
    ...told,
    values: loads.strings.map((one) => (one ? fixed(of(one), told.unit === 'N' ? 1 : 2) : '–')),
    sourced: (i) => {
      const one = loads.strings[i];
      if (!one) return sourced([formula], `no load, since ${whyNoLoad(report, i)}`);
      const other = reference.loads.strings[i];
      const share =
        other && of(other) !== 0 ? `; ${percent(of(one) / of(other))} of that of ${reference.name}` : '';
      return sourced([formula], `${inputs(one)}${share}`);
    },
  });
  return { saddle: SADDLE.map(column), wood: WOOD.map(column) };
}
