import { FIELDS } from '../design/fields.ts';
import type { SolvablePath } from '../trade/fit/placeDesign.ts';
import { FIT_NOTES } from './fitNotes.ts';
import type { Across, DesignFit, NumberFit } from './fitOf.ts';
import type { StringFit } from './stringFitOf.ts';
import { textTable } from './textTable.ts';
import { wrapText } from './wrapText.ts';

/** Columns of a terminal that is not narrow. */
const WIDTH = 100;

/** The fit of one design as a person reads it on a terminal, units in the heads. */
export function fitTable(fit: DesignFit): string {
  const paragraphs = [
    [`${fit.name} · ${fit.hand}-handed · scale ${number(fit.scaleMm, 2)} mm`],
    slot(fit),
    numbers(fit),
    strings(fit),
    intonation(fit),
    nut(fit),
    heights(fit),
    measuredAgain(fit),
    saddle(fit),
    listed(
      'Remarks',
      fit.remarks.map(({ text }) => text),
    ),
    listed('Mind', FIT_NOTES),
  ];
  return `${paragraphs
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

/** What rounds to nothing has no sign. */
const number = (value: number | null, digits: number) =>
  value === null ? '–' : value.toFixed(digits).replace(/^-(0(?:\.0*)?)$/, '$1');

function slot({ slot: s }: DesignFit): readonly string[] {
  const row = (what: string, { treble, centre, bass }: Across) => [
    what,
    ...[treble, centre, bass].map((one) => number(one, 2)),
  ];
  return textTable(
    ['Slot', 'treble', 'centre', 'bass', 'angle °'],
    [
      [...row('set-back, mm', s.setbackMm), number(s.angleDeg, 2)],
      row('nut to slot, mm', s.nutToSlotMm),
      [...row('set-back at α = 1, mm', s.least.setbackMm), number(s.least.angleDeg, 2)],
    ],
  );
}

const PATHS: Readonly<Record<SolvablePath, string>> = {
  'saddle.angle': `${FIELDS.saddle.angle.label}, °`,
  'saddle.setback': `${FIELDS.saddle.setback.label}, mm`,
  'saddle.depth': `${FIELDS.saddle.depth.label}, mm`,
  'saddle.showing': `${FIELDS.saddle.showing.label}, mm`,
  'top.thickness': `${FIELDS.top.thickness.label}, mm`,
  'top.crownRadius': `${FIELDS.top.crownRadius.label}, mm`,
};

function numbers({ numbers: all, fretPlaneMm }: DesignFit): readonly string[] {
  const row = (path: SolvablePath) => {
    const { value, by, solved }: NumberFit = all[path];
    return [PATHS[path], number(value, 2), by, number(solved, 2)];
  };
  return textTable(
    ['Solved or set', 'used', 'by', 'solved'],
    [
      ...(Object.keys(PATHS) as SolvablePath[]).map(row),
      ['Frets’ plane over the soundboard, mm', number(fretPlaneMm, 2)],
    ],
  );
}

const name = (string: StringFit, i: number) => `${i + 1} ${string.note}`;

function strings(fit: DesignFit): readonly string[] {
  return textTable(
    ['String', 'Hz', 'mm', 'core mm', 'g/m', 'N', 'GPa', 'B ×10⁻⁶'],
    [
      ...fit.strings.map((s, i) => [
        name(s, i),
        number(s.frequencyHz, 2),
        number(s.diameterMm, 3),
        number(s.coreMm, 3),
        number(s.massGM, 3),
        number(s.tensionN, 1),
        number(s.stressGPa, 2),
        number(s.inharmonicity * 1e6, 1),
      ]),
      ['all', '', '', '', '', number(fit.totalTensionN, 1)],
    ],
  );
}

function intonation({ strings: all }: DesignFit): readonly string[] {
  return textTable(
    [
      'At fret 12',
      ...['set-back mm', 'on slot mm', 'residual mm', 'filed mm', 'filable'],
      ...['bare ¢', 'on slot ¢', 'filed ¢'],
    ],
    all.map((s, i) => [
      `${name(s, i)}${s.measured ? ', measured' : ''}`,
      number(s.setbackMm, 2),
      number(s.onSlotMm, 2),
      number(s.residualMm, 2),
      number(s.filedMm, 2),
      s.filable ? 'yes' : 'no',
      number(at12(s.cents.bare), 1),
      number(s.residualCents12, 1),
      number(at12(s.cents.filed), 1),
    ]),
  );
}

/** Of a nut that stands behind the scale's end or before it; a table of its own, as intonation's is as wide as can be. */
function nut({ strings: all }: DesignFit): readonly string[] {
  if (all.every((s) => s.nutSetbackMm === 0)) return [];
  return textTable(
    ['Nut', 'set-back mm'],
    all.map((s, i) => [name(s, i), number(s.nutSetbackMm, 2)]),
  );
}

const at12 = (cents: readonly number[]) => cents[11] ?? null;

function heights({ strings: all }: DesignFit): readonly string[] {
  return textTable(
    ['Heights', 'x mm', 'over top mm', 'shows mm', 'in slot mm', 'break °', 'side °', 'down N', 'forward N'],
    all.map((s, i) => [
      name(s, i),
      number(s.xMm, 2),
      number(s.heightOverTopMm, 2),
      number(s.saddleShowingMm, 2),
      number(s.saddleInSlotMm, 2),
      number(s.breakAngleDeg, 1),
      number(s.sideAngleDeg, 1),
      number(s.saddleDownN, 1),
      number(s.saddleForwardN, 1),
    ]),
  );
}

function measuredAgain({ strings: all }: DesignFit): readonly string[] {
  if (all.every((s) => s.correctedSetbackMm === null && s.saddleChangeMm === null)) return [];
  return textTable(
    ['Measured again', 'set-back becomes mm', 'saddle changes by mm'],
    all.map((s, i) => [name(s, i), number(s.correctedSetbackMm, 2), number(s.saddleChangeMm, 2)]),
  );
}

function saddle({ saddle: { blankMm, lengthMm } }: DesignFit): readonly string[] {
  if (!blankMm) return [`Saddle: ${number(lengthMm, 1)} mm long, too short for its strings`];
  const { length, thickness, height, finished } = blankMm;
  const between = ({ least, most }: { readonly least: number; readonly most: number }) =>
    `${number(least, 2)} to ${number(most, 2)}`;
  return textTable(
    ['Saddle blank', 'mm'],
    [
      ['length', between(length)],
      ['thickness', between(thickness)],
      ['height, at least', number(height, 2)],
      ['finished height', number(finished, 2)],
    ],
  );
}

function listed(head: string, texts: readonly string[]): readonly string[] {
  if (texts.length === 0) return [];
  const items = texts.flatMap((text) =>
    wrapText(text, WIDTH - 2).map((line, i) => `${i === 0 ? '- ' : '  '}${line}`),
  );
  return [head, ...items];
}
