import { within } from '../../trade/tolerances.ts';
import type { Job } from '../job.ts';
import { length, type Setting, type Step } from '../step.ts';

/** How far off a crown's height may be, mm: half of it is the action at the 12th fret. */
const HEIGHT = within(0.1, 'own: 0.1 mm of saddle is 0.05 mm of action');
const LEAST_FILED = 0.005;

/** Cutting the saddle, fitting it and giving it its crowns. */
export function saddle(job: Job): Step {
  const { design } = job;
  return {
    id: 'saddle',
    title: 'Saddle',
    work: [
      'Thin the blank until it slides into the slot by hand and does not lean, then true its foot on the slot’s floor: it must bear along its whole length.',
      'Mark the crown from the template or from what shows under each string, file down to it, and polish.',
      ...(design.saddle.filed === 'each'
        ? ['File each crown to and fro as given, its peak a narrow line under the string.']
        : []),
    ],
    settings: [...piece(job), ...each(job)],
    check:
      'With the saddle in the slot: what shows under each string, along the saddle, by the calliper’s tail.',
    cautions: ['dust', 'strings', 'first'],
    needs: ['files', 'flat plate', 'calliper'],
    template: 'saddle',
  };
}

function piece({ saddle: { blank } }: Job): readonly Setting[] {
  if (!blank) return [];
  const { length: long, thickness, height } = blank;
  const fitted = (name: string, label: string, most: number, least: number): Setting =>
    length(`saddle.${name}`, label, most, {
      formula: `the slot’s, less up to ${(most - least).toFixed(2)}`,
      known: 'practice',
      tolerance: { minus: most - least, plus: 0, ground: 'common practice: it slides in by hand' },
    });
  return [
    fitted('length', 'Blank’s length', long.most, long.least),
    fitted('thickness', 'Blank’s thickness', thickness.most, thickness.least),
    length('saddle.blank-height', 'Blank’s height, at least', height, {
      formula: 'finished at its highest + 0.5 for shaping, rounded up',
      known: 'practice',
    }),
  ];
}

function each({ saddle: { stands }, crowns, fit, curves }: Job): readonly Setting[] {
  return stands.flatMap(({ showing, height }, i) => {
    const name = `String ${i + 1} (${fit.strings[i]?.note ?? ''})`;
    const filed = crowns[i]?.filed ?? 0;
    return [
      length(`saddle.showing-${i + 1}`, `${name}, shows over the top`, showing, {
        formula: 'string’s underside − bridge’s top, along the saddle',
        tolerance: HEIGHT,
      }),
      length(`saddle.height-${i + 1}`, `${name}, foot to crown`, height, {
        formula: `showing + in the slot, to the crown as filed, from the foot right under it${curves.slot.floorRadius === undefined ? '' : '; the template gives heights over the foot in the middle'}`,
        tolerance: HEIGHT,
      }),
      ...(Math.abs(filed) < LEAST_FILED
        ? []
        : [
            length(
              `saddle.filed-${i + 1}`,
              `${name}, crown off the middle, toward the ${filed > 0 ? 'pins' : 'nut'}`,
              Math.abs(filed),
              {
                formula: 'its set-back − the slot’s, as far as the saddle’s width allows',
                tolerance: within(0.2, 'own: half a cent at the 12th fret'),
              },
            ),
          ]),
    ];
  });
}
