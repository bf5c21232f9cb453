import { expect, test } from 'vitest';
import { essence } from '../../src/app/form/essence.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import type { DesignText } from '../../src/design/design.ts';
import { GROUPS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { designText } from '../support/change.ts';

const text = designText();
const lines = (design: DesignText) =>
  Object.fromEntries(GROUPS.map((group) => [group, essence(group, design)]));

test('each closed group says its essence', () => {
  expect(lines(text)).toEqual({
    guitar: '645 · dome 25 ft',
    action: '1.9 / 2.4 at the 12th',
    strings: 'Light · six · 55 wide',
    footprint: '153 × 36 · belly',
    underside: 'as the soundboard',
    top: '9.5 thick · tips 3',
    saddle: '3.2 × 74 · 2.9°',
    pins: '3/16 in · 5° taper',
    timber: 'Indian rosewood',
    aim: 'nothing',
    limits: 'what findings are held against',
  });
});

test('other choices say something else', () => {
  const other: DesignText = {
    ...text,
    guitar: {
      ...text.guitar,
      hand: 'left',
      scale: '25 1/2 in',
      soundboard: 'cylinder',
      soundboardRadius: 8534.4,
    },
    strings: { ...text.strings, count: 12, spread: '54.5' },
    footprint: { ...text.footprint, backEdge: 'soundhole' },
    underside: { shape: 'sphere', radius: '28 ft' },
    saddle: { ...text.saddle, ends: 'open', angle: '2.5°' },
    pins: { ...text.pins, taper: 0, drill: 5 },
  };
  expect(lines(other)).toMatchObject({
    guitar: 'left-handed · 25 1/2 in · arch 8.53 m',
    strings: 'Light · twelve · 54.5 wide',
    footprint: '153 × 36 · waisted',
    underside: 'dome 28 ft',
    saddle: '3.2 open · 2.5°',
    pins: '5 · parallel',
  });
});

test('what can’t be made is said as typed', () => {
  const solved = { thicknessBy: 'solved' } as const;
  expect(essence('top', { ...text, top: { ...text.top, ...solved } })).toBe('thickness solved · tips 3');
  expect(essence('top', { ...text, top: { ...text.top, thickness: 'thick' } })).toBe('thick thick · tips 3');
  expect(essence('strings', { ...text, strings: { ...text.strings, count: '' } })).toBe('Light · 55 wide');
});

test('a solved number is said as such', () => {
  const { fit } = acceptDesign(initialDesign());
  const at = (path: 'top.thickness' | 'saddle.angle') => fit.solved[path].solved.toFixed(2);
  expect(essence('top', initialDesign(), fit.solved)).toBe(`${at('top.thickness')} solved · tips 3`);
  expect(essence('saddle', initialDesign(), fit.solved)).toBe(`3.2 × 74 · ${at('saddle.angle')}° solved`);
});
