import { type Drawn, type Mark, WIDTH, word } from '../picture/mark.ts';

/** One bar, named before it and told after it. */
export interface Bar {
  readonly name: string;
  /** Not below 0. */
  readonly value: number;
  readonly text: string;
}

/** Height of a row and of its bar, px. */
const ROW = 19;
const THICK = 11;
/** Where bars begin and where the longest ends, px: names and numbers stand beside. */
const [FROM, TO] = [94, WIDTH - 62] as const;

/** Bars under one another, the longest as long as there is room. */
export function barPicture(bars: readonly Bar[]): Drawn {
  const most = Math.max(...bars.map(({ value }) => value));
  const marks = bars.flatMap(({ name, value, text }, i): readonly Mark[] => {
    const top = i * ROW + (ROW - THICK) / 2;
    const end = FROM + (most > 0 ? ((TO - FROM) * value) / most : 0);
    return [
      word(`name ${name}`, name, [0, top + THICK - 1.5], 'start', 'soft'),
      {
        kind: 'line',
        name: `bar ${name}`,
        pen: 'detail',
        fill: 'wood',
        closed: true,
        points: [
          [FROM, top],
          [end, top],
          [end, top + THICK],
          [FROM, top + THICK],
        ],
      },
      word(`value ${name}`, text, [WIDTH, top + THICK - 1.5], 'end'),
    ];
  });
  return { height: bars.length * ROW, marks };
}
