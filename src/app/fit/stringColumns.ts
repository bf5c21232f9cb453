import type { Design } from '../../design/design.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { coreDiameterMm } from '../../trade/stringSpec.ts';
import { fixed } from '../figures/figure.ts';
import { type Sourced, sourced } from './sourced.ts';

/** One column of a table by string. */
export interface Column {
  readonly key: string;
  readonly head: string;
  readonly unit: string;
  /** What the head says in full. */
  readonly name: string;
  /** As shown, string by string. */
  readonly values: readonly string[];
  /** Which of them are amiss. */
  readonly amiss?: readonly boolean[];
  /** How one string's value comes about. */
  sourced(i: number): Sourced;
  readonly path: string;
}

const signed = (value: number, decimals: number) => {
  const text = fixed(value, decimals);
  return value > 0 && Number.parseFloat(text) !== 0 ? `+${text}` : text;
};

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

/** Heights at the saddle, and how the strings go down to their pins. */
export function saddleColumns(
  { saddle }: Design,
  fit: Fit,
  { saddle: stands, breaks }: FitReport,
): readonly Column[] {
  const { undersides, fretPlane } = fit.height;
  const at = (i: number) => stands.stands[i];
  return [
    {
      key: 'over',
      head: 'over top',
      unit: 'mm',
      name: 'String’s underside over the soundboard at the saddle',
      values: undersides.map((z) => fixed(z, 2)),
      sourced: (i) =>
        sourced(
          ['string-height', 'I3', 'sagitta'],
          `p ${fixed(fretPlane, 2)}, hₛ ${fixed(fit.heights[i]?.saddle ?? 0, 2)}, R ${fixed(fit.height.fretboardRadius, 1)}, x ${fixed(fit.strings[i]?.x ?? 0, 2)} mm`,
        ),
      path: 'action.planeBy',
    },
    {
      key: 'showing',
      head: 'shows',
      unit: 'mm',
      name: 'Saddle showing over the bridge’s top',
      values: stands.stands.map(({ showing }) => fixed(showing, 2)),
      amiss: stands.stands.map(({ showing }) => showing < 0),
      sourced: (i) =>
        sourced(
          ['string-height'],
          `string ${fixed(undersides[i] ?? 0, 2)} less the bridge’s top there${lean(saddle.tilt)}`,
        ),
      path: 'saddle.showing',
    },
    {
      key: 'inSlot',
      head: 'in slot',
      unit: 'mm',
      name: 'Saddle in the slot',
      values: stands.stands.map(({ inSlot }) => fixed(inSlot, 2)),
      amiss: stands.stands.map(({ half }) => !half),
      sourced: (i) =>
        sourced(
          ['half-rule'],
          `${fixed(at(i)?.inSlot ?? 0, 2)} in, ${fixed(at(i)?.showing ?? 0, 2)} showing, ${fixed(at(i)?.height ?? 0, 2)} mm in all`,
        ),
      path: 'saddle.depth',
    },
    {
      key: 'break',
      head: 'break',
      unit: '°',
      name: 'Break angle over the saddle',
      values: breaks.map(({ over }) => (over ? fixed(over.angle, 1) : '–')),
      amiss: breaks.map(({ over }) => !over?.straight),
      sourced: (i) => {
        const over = breaks[i]?.over;
        return sourced(
          ['B4'],
          over
            ? `falls ${fixed(over.rise, 2)} over ${fixed(over.run, 2)} mm to ${over.straight ? 'the hole’s edge' : 'the wood before its hole'}, ${fixed(over.angle - over.behind, 2)}° in front`
            : 'its pin doesn’t lie behind the slot',
        );
      },
      path: 'pins.behindSlot',
    },
    {
      key: 'side',
      head: 'side',
      unit: '°',
      name: 'Side angle over the saddle',
      values: breaks.map(({ side }) => fixed(Math.abs(side), 1)),
      sourced: (i) =>
        sourced(
          ['side-angle'],
          `toward ${(breaks[i]?.side ?? 0) > 0 ? 'the right' : 'the left'}, seen from the front with the neck up`,
        ),
      path: 'pins.spread',
    },
  ];
}

/** What the strings pull, and what their cores bear. */
export function tensionColumns(
  { guitar, strings: field }: Design,
  { strings }: Fit,
  { breaks }: FitReport,
): readonly Column[] {
  return [
    {
      key: 'tension',
      head: 'pulls',
      unit: 'N',
      name: 'Tension',
      values: strings.map(({ tensionN }) => fixed(tensionN, 1)),
      sourced: (i) => {
        const one = strings[i];
        return sourced(
          ['S2', one?.spec.wound ? 'S5' : 'S4', 'S1'],
          `μ ${fixed((one?.massKgM ?? 0) * 1000, 3)} g/m, L ${fixed(guitar.scale, 2)} mm, f ${fixed(one?.frequencyHz ?? 0, 2)} Hz`,
        );
      },
      path: 'strings.notes',
    },
    {
      key: 'load',
      head: 'on saddle',
      unit: 'N',
      name: 'Load on the saddle',
      values: breaks.map(({ load }) => (load ? fixed(load.resultant, 1) : '–')),
      sourced: (i) => {
        const load = breaks[i]?.load;
        return sourced(
          ['B2', 'B3'],
          load
            ? `${fixed(load.down, 1)} N down, ${fixed(load.forward, 1)} N toward the nut`
            : 'its pin doesn’t lie behind the slot',
        );
      },
      path: 'pins.behindSlot',
    },
    {
      key: 'inharmonicity',
      head: 'B × 10⁵',
      unit: '',
      name: 'Inharmonicity B',
      values: strings.map(({ inharmonicity }) => fixed(inharmonicity * 1e5, 2)),
      sourced: (i) => {
        const one = strings[i];
        return sourced(
          ['S7'],
          `d ${fixed(one ? coreDiameterMm(one.spec) : 0, 3)} mm, E ${field.modulus} GPa, T ${fixed(one?.tensionN ?? 0, 1)} N, L ${fixed(guitar.scale, 2)} mm`,
        );
      },
      path: 'strings.cores',
    },
    {
      key: 'stress',
      head: 'of 2 GPa',
      unit: '%',
      name: 'Core’s stress, of what string steel is stressed up to',
      values: strings.map(({ stressShare }) => fixed(100 * stressShare, 0)),
      amiss: strings.map(({ stressShare }) => stressShare > 1),
      sourced: (i) =>
        sourced(
          ['S5'],
          `${fixed((strings[i]?.stressPa ?? 0) / 1e9, 3)} GPa in the core; a figure to compare by, not a strength that is guaranteed`,
        ),
      path: 'strings.cores',
    },
  ];
}

/** What the finished guitar's own measures turn into; no column for what was not measured. */
export function measuredColumns({ action }: Design, { crowns, measured }: FitReport): readonly Column[] {
  const { setbacks, saddles } = measured;
  const columns: Column[] = [];
  if (setbacks.some((setback) => setback !== undefined))
    columns.push({
      key: 'corrected',
      head: 'set-back',
      unit: 'mm',
      name: 'Set-back that brings the 12th fret in tune, from your cents',
      values: setbacks.map((setback) => (setback === undefined ? '–' : fixed(setback, 2))),
      sourced: (i) =>
        sourced(
          ['measured-setback'],
          action.cents[i] === undefined
            ? 'no cents were measured'
            : `${signed(action.cents[i] as number, 1)} cents with a set-back of ${fixed(crowns[i]?.setback ?? 0, 2)} mm`,
        ),
      path: 'action.cents',
    });
  if (saddles.length > 0) {
    const saddle = (head: string, name: string, values: readonly string[]): Column => ({
      key: head,
      head,
      unit: 'mm',
      name,
      values,
      sourced: () =>
        sourced(['measured-saddle'], `measured ${action.measured.join(' and ')} mm at the outer strings`),
      path: 'action.measured',
    });
    columns.push(
      saddle(
        'change',
        'What the saddle gains or loses',
        saddles.map(({ change }) => signed(change, 2)),
      ),
      saddle(
        'height',
        'Saddle’s height then',
        saddles.map(({ height }) => fixed(height, 2)),
      ),
      saddle(
        'shows',
        'Showing then',
        saddles.map(({ showing }) => fixed(showing, 2)),
      ),
    );
  }
  return columns;
}

function lean(tilt: number): string {
  return tilt === 0 ? '' : `, along a saddle that leans by ${tilt}°`;
}
