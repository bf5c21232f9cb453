import type { Curves, Pin } from '../../../models/curves/curves.ts';
import { holeRadius } from '../../../models/curves/holeRadius.ts';
import { slotReach } from '../../../models/curves/slotReach.ts';
import { undersideHeight } from '../../../models/curves/underside.ts';
import type { Design } from '../../design/design.ts';
import { frontWall } from '../frontWall.ts';
import { type GlueFace, type GlueLoad, glueLoad } from '../glueLoad.ts';
import { pinBearing } from '../pinBearing.ts';
import type { SaddleLoad } from '../saddleLoad.ts';
import type { SaddleStand } from '../saddleStand.ts';
import { slotShares } from '../slotShares.ts';
import { type SlotWalls, slotWalls } from '../slotWalls.ts';
import { squareToSaddle } from '../squareToSaddle.ts';
import { stringCouple } from '../stringCouple.ts';
import type { FitReport } from './fitReport.ts';
import type { Fit } from './placeDesign.ts';
import { woodInFront } from './woodInFront.ts';

/** What one string does to a bridge whose saddle it bears on. N, mm, MPa. */
export interface StringLoad {
  /** On the saddle: down, forward, and both together (B2, B3). */
  readonly saddle: SaddleLoad;
  /** On the slot's walls (B7). */
  readonly walls: SlotWalls;
  /** In the wood in front of the slot (B8); 0 when the string tips its saddle back. */
  readonly wallStressMPa: number;
  /** The front wall as it is taken for that: this string's length of it, and its thickness. */
  readonly wall: { readonly share: number; readonly thickness: number; readonly height: number };
  /** On the front of the pin hole, as reamed. */
  readonly bearingMPa: number;
}

/** What the strings do to a bridge. For comparing designs: see `LOAD_CAUTION`. */
export interface Loads {
  /** All strings' tension, N. */
  readonly pullN: number;
  /** B1, N·m. */
  readonly coupleNm: number;
  /** B6. The tail's edge lifts. */
  readonly glue: GlueLoad;
  /** Undefined for a string that the saddle doesn't bear: without a break angle, under the bridge's top, past the slot. */
  readonly strings: readonly (StringLoad | undefined)[];
}

/** Every load of a drawn bridge with its strings at pitch. */
export function loads(
  design: Design,
  curves: Curves,
  fit: Fit,
  { saddle, breaks }: Pick<FitReport, 'saddle' | 'breaks'>,
  glue: GlueFace,
): Loads {
  const { slot } = curves;
  const pulls = fit.strings.map(({ tensionN }, i) => ({
    tensionN,
    heightMm: fit.height.undersides[i] as number,
  }));
  const pullN = pulls.reduce((sum, { tensionN }) => sum + tensionN, 0);
  const coupleNm = stringCouple(pulls);
  const cos = Math.cos(slot.angle);
  const places = fit.strings.map(({ x }) => x / cos);
  const shares = slotShares(places, slotReach(curves));
  return {
    pullN,
    coupleNm,
    glue: glueLoad(pullN, coupleNm, glue),
    strings: fit.strings.map(({ tensionN }, i) => {
      const { over, load } = breaks[i] ?? {};
      const stand = saddle.stands[i] as SaddleStand;
      const held = stand.showing >= 0 && stand.inSlot > 0;
      if (!over || !load || over.angle <= 0 || !held) return undefined;
      const square = squareToSaddle(load.down, load.forward, design.saddle.tilt);
      const walls = slotWalls(square, stand.showing, stand.inSlot);
      const share = shares[i] as number;
      const thickness = woodInFront(curves, places[i] as number);
      const atMouth = walls.tips === 'forward' ? walls.front : 0;
      return {
        saddle: load,
        walls,
        wallStressMPa: frontWall(atMouth, stand.inSlot, share, thickness),
        wall: { share, thickness, height: stand.inSlot },
        bearingMPa: bearing(curves, curves.pins[i] as Pin, tensionN, over.behind),
      };
    }),
  };
}

/** A string that bends over wood on its way leaves a part of its pull there: it is counted as the hole's. */
function bearing({ underside }: Curves, { at, top, outline }: Pin, tensionN: number, behind: number) {
  const foot = undersideHeight(underside, at[0], at[1]);
  const halfWay = holeRadius(outline.reamed, (top + foot) / 2);
  return pinBearing(tensionN, behind, 2 * halfWay, top - foot);
}
