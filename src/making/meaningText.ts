import type { AcceptedDesign } from '../design/acceptDesign.ts';
import { fixed } from '../report/said.ts';
import { judgeMeasured } from './judgeMeasured.ts';
import type { MeaningFigures, Measured } from './meaning.ts';
import type { Setting, Step } from './step.ts';
import { UNSEEN } from './unseen.ts';
import type { Workshop } from './workshop.ts';

interface Bench {
  /** As designed. */
  readonly steps: readonly Step[];
  readonly measured: Measured;
  readonly workshop: Workshop;
}

/** What the measured values mean, in words: nothing where nothing was measured. */
export function meaningText(
  figures: MeaningFigures,
  accepted: AcceptedDesign,
  bench: Bench,
): readonly string[] {
  const settings = new Map(bench.steps.flatMap(({ settings }) => settings.map((one) => [one.id, one])));
  if (!Object.keys(bench.measured).some((id) => settings.has(id))) return [];
  const tells = [
    ...blankWords(figures, accepted, bench, settings),
    ...heightWords(figures, accepted, bench),
    ...slotWords(figures, accepted),
    ...strengthWords(figures, settings),
    ...fitWords(accepted, bench, settings),
  ];
  return [...tells, ...(tells.length === 0 ? [restWords(figures)] : []), ...stuffWords(figures, accepted)];
}

function restWords({ outside: n }: MeaningFigures): string {
  if (n === 0) return 'All that was measured is as designed, within tolerance.';
  return n === 1
    ? '1 value is outside its tolerance; it changes neither action, intonation nor strength.'
    : `${n} values are outside their tolerance; none of them changes action, intonation or strength.`;
}

/** A blank planed otherwise: how deep its slot must be, and whether the thickness is still in it. */
function blankWords(
  { made: { planed } }: MeaningFigures,
  { design, curves }: AcceptedDesign,
  { workshop }: Bench,
  settings: ReadonlyMap<string, Setting>,
): readonly string[] {
  if (Math.abs(planed) < UNSEEN) return [];
  const more = planed / Math.cos(curves.slot.tilt);
  const deep = (settings.get('slot.depth')?.value ?? 0) + more;
  const over = workshop.topAllowance + planed;
  const { thickness } = design.top;
  const still =
    over < -UNSEEN
      ? `The wanted thickness can no longer be reached: at most ${fixed(thickness + over, 2)} mm of ${fixed(thickness, 2)}.`
      : `The wanted thickness can still be reached: ${fixed(Math.max(0, over), 2)} mm stand over it${over < workshop.finishAllowance - UNSEEN ? `, less than the ${fixed(workshop.finishAllowance, 2)} meant for finishing` : ''}.`;
  return [
    `The blank is planed ${planed > 0 ? 'thicker' : 'thinner'} than set: cut the slot ${fixed(deep, 2)} mm deep in all from its face, ${fixed(Math.abs(more), 2)} ${planed > 0 ? 'more' : 'less'}.${planed < 0 ? ` ${still}` : ''}`,
  ];
}

/** What tells how deep the slot is: see `asMade`. */
const DEPTHS = ['check.slot-depth', 'crown.left-middle', 'slot.depth', 'slot.touch'] as const;

function heightWords(
  { strings, made }: MeaningFigures,
  { design }: AcceptedDesign,
  { measured }: Bench,
): readonly string[] {
  const rises = strings.map(({ rise }) => rise);
  const out: string[] = [];
  if (rises.some((rise) => Math.abs(rise) >= UNSEEN)) {
    const each = strings.map(
      ({ note, action }) => `${note} ${fixed(action.now, 2)} (${fixed(action.designed, 2)} designed)`,
    );
    const most = rises.reduce((far, rise) => (Math.abs(rise) > Math.abs(far) ? rise : far), 0);
    out.push(
      `Action at the 12th fret comes out at ${each.join(', ')} mm, with a saddle as designed where it was not measured: half of what the crowns stand ${most > 0 ? 'higher' : 'lower'}, ${fixed(Math.abs(most), 2)} mm at most.`,
    );
  }
  if (Math.abs(made.thicker) >= UNSEEN || Math.abs(made.deeper) >= UNSEEN) {
    out.push(
      'The saddle makes up for the bridge: give it the heights wanted now, string by string, and the action is as designed. The saddle’s own step is judged by them.',
    );
    if (!DEPTHS.some((id) => Object.hasOwn(measured, id))) {
      out.push(
        `Foot to crown is for a slot ${fixed(design.saddle.depth, 2)} mm deep, as designed: measure it before the saddle is cut.`,
      );
    }
  }
  return out;
}

function slotWords({ slot }: MeaningFigures, { design }: AcceptedDesign): readonly string[] {
  const { scale } = design.guitar;
  const { angle, setback } = design.saddle;
  const [lies, turns] = [Math.abs(slot.back) >= UNSEEN, Math.abs(slot.turn) >= UNSEEN];
  if (!lies && !turns) return [];
  const how = [
    ...(lies
      ? [`${fixed(Math.abs(slot.back), 2)} mm further ${slot.back > 0 ? 'back' : 'forward'} on the bridge`]
      : []),
    ...(turns ? [`at ${fixed(angle + slot.turn, 2)}° in place of ${fixed(angle, 2)}°`] : []),
  ];
  return [
    `The slot lies ${how.join(', ')}: that is in the intonation, string by string. Lay the bridge by the slot’s middle, ${fixed(scale + setback, 2)} mm from the scale’s end at the nut${turns ? '' : ', and its place costs nothing'}.`,
  ];
}

function strengthWords(
  { made: { thicker }, stiffness, woodUnder }: MeaningFigures,
  settings: ReadonlyMap<string, Setting>,
): readonly string[] {
  const wood = settings.get('check.wood-under')?.value ?? woodUnder;
  return [
    ...(Math.abs(thicker) >= UNSEEN
      ? [
          `The block is ${fixed(Math.abs(stiffness - 1) * 100, 0)} % ${stiffness > 1 ? 'stiffer' : 'less stiff'} than designed: stiffness goes with thickness cubed. That compares two bridges, and promises no strength.`,
        ]
      : []),
    ...(Math.abs(woodUnder - wood) >= UNSEEN
      ? [
          woodUnder > 0
            ? `Wood under the slot: ${fixed(woodUnder, 2)} mm in place of ${fixed(wood, 2)}${woodUnder < 2 ? '; 2 to 3 is common practice' : ''}.`
            : 'No wood is left under the slot: it goes through.',
        ]
      : []),
  ];
}

/** What goes with the slot, and with the soundboard. */
function fitWords(
  { curves }: AcceptedDesign,
  { measured }: Bench,
  settings: ReadonlyMap<string, Setting>,
): readonly string[] {
  const width = measured['check.slot-width'] ?? measured['slot.width'];
  const gapes = ['underside.gap', 'underside.gap-across'].some((id) => {
    const [setting, value] = [settings.get(id), measured[id]];
    return setting && value !== undefined && judgeMeasured(setting, value).within === false;
  });
  return [
    ...(width !== undefined && Math.abs(width - curves.slot.width) >= UNSEEN
      ? [`The saddle goes with its slot: make it ${fixed(width - 0.05, 2)} to ${fixed(width, 2)} mm thick.`]
      : []),
    ...(gapes
      ? [
          'The glue face is hollow by another amount than its soundboard: the joint would be glued under strain. Sand it again on its block.',
        ]
      : []),
  ];
}

function stuffWords({ density }: MeaningFigures, { design }: AcceptedDesign): readonly string[] {
  if (density === undefined) return [];
  return [
    `This piece of ${design.timber.name} has ${fixed(density, 0)} kg/m³, ${fixed(design.timber.density, 0)} in the design.`,
  ];
}
