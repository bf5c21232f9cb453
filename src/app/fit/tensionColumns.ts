import type { Design } from '../../design/design.ts';
import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { coreDiameterMm } from '../../trade/stringSpec.ts';
import type { Column } from './column.ts';
import { sourced } from './sourced.ts';

/** What the strings pull, and what their cores bear. */
export function tensionColumns(
  { guitar, strings: field, limits }: Design,
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
      head: 'B × 10⁶',
      unit: '',
      name: 'Inharmonicity B',
      values: strings.map(({ inharmonicity }) => fixed(inharmonicity * 1e6, 1)),
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
      amiss: strings.map(({ stressPa }) => stressPa / 1e9 > limits.steel),
      sourced: (i) =>
        sourced(
          ['S5'],
          `${fixed((strings[i]?.stressPa ?? 0) / 1e9, 3)} GPa in the core; a figure to compare by, not a strength that is guaranteed`,
        ),
      path: 'strings.cores',
    },
  ];
}
