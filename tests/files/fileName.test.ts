import { expect, test } from 'vitest';
import { fileName } from '../../src/files/fileName.ts';
import { safeName } from '../../src/files/safeName.ts';

test('a file says how its holes are made, and an STL its unit and fineness', () => {
  expect(fileName('Heron', 'drilled', { format: 'step' })).toBe('Heron_as-drilled.step');
  expect(fileName('Heron', 'reamed', { format: 'stl', deviationMm: 0.02 })).toBe(
    'Heron_as-reamed_mm_facets-0.02.stl',
  );
});

test('names become safe, and keep the letters and figures of any script', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['Heron', 'Heron'],
    ['Grünspecht №7 – 寒鴉', 'Grünspecht-7-寒鴉'],
    ['../../etc/passwd', 'etc-passwd'],
    ['C:\\bridges\\one', 'C-bridges-one'],
    ['  . hidden.  ', 'hidden'],
    ['a "b" \'c\' <d>|?*', 'a-b-c-d'],
    ['line\nbreak\u0000\u0007', 'line-break'],
    ['right\u202eto left', 'right-to-left'],
    ['😀 …', 'bridge'],
    ['', 'bridge'],
    ['-rf', 'rf'],
    ['CON', 'CON-bridge'],
    ['lpt1', 'lpt1-bridge'],
    ['com¹', 'com¹-bridge'],
    ['console', 'console'],
    // one file on a disk, whichever way its accents were typed
    ['e\u0301', '\u00e9'],
  ];
  for (const [name, safe] of cases) expect(safeName(name), JSON.stringify(name)).toBe(safe);
});

test('long names are cut between characters, to what every disk takes with an ending added', () => {
  expect(safeName('x'.repeat(300))).toBe('x'.repeat(80));
  expect(safeName(`${'x'.repeat(79)} y`)).toBe('x'.repeat(79));
  for (const name of ['鴉'.repeat(300), '𠀋'.repeat(300)]) {
    const full = fileName(name, 'reamed', { format: 'stl', deviationMm: 0.001 });
    expect(new TextEncoder().encode(full).length, full).toBeLessThan(255);
    // half a surrogate pair can't be encoded
    expect(() => encodeURIComponent(full), full).not.toThrow();
  }
});

test('a suffix is kept whole, and what is safe stays as it is', () => {
  expect(safeName('x'.repeat(300), '-12')).toBe(`${'x'.repeat(77)}-12`);
  for (const name of ['x'.repeat(300), 'CON', 'a/b', '鴉'.repeat(300), '']) {
    const safe = safeName(name, '-2');
    expect(safeName(safe), name).toBe(safe);
  }
});
