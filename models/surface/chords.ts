import { quarterTurns } from '../curves/rim/plan.ts';
import { type Chain, type Point, pointAt, type Segment } from '../curves/segment.ts';

/** A place where the outline crosses a line x = const: its y and the outline's dy/dx there. */
export interface Crossing {
  readonly y: number;
  readonly slope: number;
}

/** What lies inside the outline on a line x = const: from its back crossing to its front one. */
export interface Chord {
  readonly back: Crossing;
  readonly front: Crossing;
}

/** The chords of a closed outline at x, from the tail toward the nut. */
export function chordsOf(outline: Chain): (x: number) => readonly Chord[] {
  const parts = outline.flatMap(rising);
  return (x) => {
    const found: Crossing[] = [];
    for (const part of parts) if (part.from > x !== part.to > x) found.push(part.at(x));
    found.sort((a, b) => a.y - b.y);
    const chords: Chord[] = [];
    for (let i = 1; i < found.length; i += 2)
      chords.push({ back: found[i - 1] as Crossing, front: found[i] as Crossing });
    return chords;
  };
}

/** x at which chords begin, end or change their law: the outline's joints, and where an arc turns back. Unsorted. */
export function chordBreaks(outline: Chain): readonly number[] {
  return outline.flatMap((s) => [s.from[0], ...turns(s).map((p) => p[0])]);
}

/** A part of the outline along which x only rises or only falls. */
interface Rising {
  /** x where it begins and where it ends. */
  readonly from: number;
  readonly to: number;
  at(x: number): Crossing;
}

const turns = (s: Segment): readonly Point[] =>
  s.kind === 'line' ? [] : quarterTurns(s, [0, Math.PI]).map((t) => pointAt(s, t));

function rising(s: Segment): readonly Rising[] {
  if (s.kind === 'line') {
    const slope = (s.to[1] - s.from[1]) / (s.to[0] - s.from[0]);
    return [{ from: s.from[0], to: s.to[0], at: (x) => ({ y: s.from[1] + (x - s.from[0]) * slope, slope }) }];
  }
  const [cx, cy] = s.centre;
  // ends as drawn, not as computed: where one piece ends the next begins
  const ends = [...turns(s), s.to];
  return ends.map((b, i) => {
    const a = i === 0 ? s.from : (ends[i - 1] as Point);
    // walked counter-clockwise, a circle's upper half goes toward −x
    const side = b[0] < a[0] === (s.turn === 1) ? 1 : -1;
    return {
      from: a[0],
      to: b[0],
      at: (x) => {
        const up = Math.sqrt(Math.max(0, s.radius ** 2 - (x - cx) ** 2));
        return { y: cy + side * up, slope: up > 0 ? (-side * (x - cx)) / up : Number.POSITIVE_INFINITY };
      },
    };
  });
}
