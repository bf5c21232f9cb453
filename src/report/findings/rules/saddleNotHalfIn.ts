import type { SaddleStand } from '../../../trade/saddleStand.ts';
import { below, mm, said } from '../../said.ts';
import { nameStrings, stringsWhere } from '../ofStrings.ts';
import { saddleUnder } from '../places.ts';
import { PRACTICE, rule } from '../rule.ts';

export const saddleNotHalfIn = rule({
  id: 'saddle-not-half-in',
  about: 'fit',
  watches: 'Enough of the saddle stands in its slot under every string.',
  judge: (judged) => {
    const { held } = judged.accepted.design.limits;
    const { stands } = judged.report.saddle;
    const loose = stringsWhere(judged, (i) => below(share(stands[i]), held, DECIMALS));
    if (loose.length === 0) return undefined;
    const least = Math.min(...loose.map((i) => share(stands[i])));
    const deeper = Math.max(...loose.map((i) => lacking(stands[i], held)));
    return {
      severity: 'warning',
      text: `${said(100 * least, '%', 1)} of the saddle stands in the wood under ${nameStrings(judged, loose)}, where the slot is up to ${mm(deeper)} too shallow: strings that pull at a saddle held so little lean it forward and split the wood before it.`,
      found: said(100 * least, '%', 1),
      limit: `at least ${said(100 * held, '%', 1)}`,
      source: PRACTICE,
      path: 'saddle.depth',
      limitPath: 'limits.held',
      place: loose.map((i) => saddleUnder(judged, i)),
      mends: ['saddle.depth', 'saddle.showing', 'saddle.woodUnder', 'top.thickness'],
    };
  },
});

/** A thousandth: as finely as a share is said. */
const DECIMALS = 3;

/** Of the saddle's height, what stands in the slot; a string under the top has none of it showing. */
const share = (stand: SaddleStand | undefined) =>
  !stand || stand.showing <= 0 ? 1 : stand.inSlot / stand.height;

/** How much deeper the slot must be for the saddle to be held as wanted, mm. */
const lacking = (stand: SaddleStand | undefined, held: number) =>
  stand ? (held * stand.height - stand.inSlot) / (1 - held) : 0;
