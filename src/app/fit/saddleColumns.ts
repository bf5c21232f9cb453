import type { Design } from '../../design/design.ts';
import { fixed } from '../../report/said.ts';
import type { FitReport } from '../../trade/fit/fitReport.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { isHeld } from '../../trade/saddleStand.ts';
import type { Column } from './column.ts';
import { sourced } from './sourced.ts';

/** Heights at the saddle, and how the strings go down to their pins. */
export function saddleColumns(
  { saddle, limits }: Design,
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
      name: 'String’s underside at the saddle, over the soundboard on the centre line',
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
      amiss: stands.stands.map((stand) => !isHeld(stand, limits.held)),
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

function lean(tilt: number): string {
  return tilt === 0 ? '' : `, along a saddle that leans by ${tilt}°`;
}
