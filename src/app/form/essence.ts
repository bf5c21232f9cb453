import type { DesignText, Typed } from '../../design/design.ts';
import type { Group } from '../../design/fields.ts';
import type { Fit } from '../../trade/fit/placeDesign.ts';
import { plainText } from './plainText.ts';
import { readable } from './readable.ts';

const COUNTS: Readonly<Record<string, string>> = {
  4: 'four',
  5: 'five',
  6: 'six',
  7: 'seven',
  8: 'eight',
  9: 'nine',
  10: 'ten',
  11: 'eleven',
  12: 'twelve',
};

type Solved = Fit['solved'] | undefined;

const LINES: Readonly<Record<Group, (d: DesignText, solved: Solved) => readonly string[]>> = {
  guitar: ({ guitar: g }) => [
    g.hand === 'left' ? 'left-handed' : '',
    plainText(g.scale),
    g.soundboard === 'flat'
      ? 'flat'
      : `${g.soundboard === 'cylinder' ? 'arch' : 'dome'} ${radius(g.soundboardRadius)}`,
  ],
  action: ({ action: a }) => [`${plainText(a.treble)} / ${plainText(a.bass)} at the 12th`],
  strings: ({ strings: s }) => [
    plainText(s.set),
    COUNTS[plainText(s.count)] ?? plainText(s.count),
    `${plainText(s.spread)} wide`,
  ],
  footprint: ({ footprint: f }) => [`${plainText(f.length)} × ${plainText(f.depthCentre)}`, edges(f)],
  underside: ({ underside: u }) => [
    u.shape === 'follows'
      ? 'as the soundboard'
      : u.shape === 'flat'
        ? 'flat'
        : `${u.shape === 'cylinder' ? 'arch' : 'dome'} ${radius(u.radius)}`,
  ],
  top: ({ top: t }, solved) => [
    t.thicknessBy === 'set'
      ? `${plainText(t.thickness)} thick`
      : found('thickness', solved?.['top.thickness'].solved),
    `tips ${plainText(t.tip)}`,
  ],
  saddle: ({ saddle: s }, solved) => [
    s.ends === 'open'
      ? `${plainText(s.slotWidth)} open`
      : `${plainText(s.slotWidth)} × ${plainText(s.slotLength)}`,
    s.angleBy === 'set' ? degrees(s.angle) : found('angle', solved?.['saddle.angle'].solved, '°'),
  ],
  pins: ({ pins: p }) => [plainText(p.drill), p.taper === 0 ? 'parallel' : `${degrees(p.taper)} taper`],
  timber: ({ timber: t }) => [plainText(t.name)],
  aim: ({ aim: a }) => [
    a.of === 'mass'
      ? `${plainText(a.mass)} g`
      : a.of === 'stiffness'
        ? `${plainText(a.stiffness)} N·m²`
        : a.of === 'tip'
          ? `${plainText(a.tip)} at the tips`
          : 'nothing',
  ],
  limits: () => ['what findings are held against'],
};

/**
 * What a closed group says of itself in one line: `645 · dome 25 ft`. Values as typed.
 *
 * @param solved numbers solved from the guitar, of the last good design
 */
export function essence(group: Group, design: DesignText, solved?: Solved): string {
  return LINES[group](design, solved)
    .filter((part) => part !== '')
    .join(' · ');
}

function edges(f: DesignText['footprint']): string {
  if (f.backEdge === 'tail') return 'belly';
  if (f.backEdge === 'soundhole' || f.frontEdge === 'tail') return 'waisted';
  return f.frontEdge === 'soundhole' ? 'front belly' : 'straight';
}

/** Plain millimetres of a dome are long to read: `7620` is said as 7.62 m. */
function radius(typed: Typed): string {
  const text = plainText(typed);
  const mm = Number(text);
  return text !== '' && Number.isFinite(mm) ? `${Math.round(mm / 10) / 100} m` : text;
}

function degrees(typed: Typed): string {
  const text = plainText(typed);
  return /\d$/.test(text) ? `${text}°` : text;
}

function found(what: string, solved: number | undefined, unit = ''): string {
  return solved === undefined ? `${what} solved` : `${readable(solved)}${unit} solved`;
}
