import { expect, test } from 'vitest';
import { CAUTIONS, CHOSEN_IS_LISTED, cautionFor, isDalbergia } from '../../src/trade/cautions.ts';
import { WOODS } from '../../src/trade/woods.ts';

// limits: Directive 2017/2398 and UK as quoted; OSHA and NIOSH read
test('dust: each body’s limit stands beside its name', () => {
  for (const said of [
    'EU 2 mg/m³ (Directive 2017/2398)',
    'UK 3',
    'OSHA 15 in all and 5 respirable',
    'NIOSH advises 1',
  ])
    expect(CAUTIONS.dust.text).toContain(said);
});

test('rules, manuals and qualified persons come first', () => {
  expect(CAUTIONS.first.text).toMatch(/Local rules, the machine’s manual and a qualified person come before/);
});

test('a Dalbergia is known by its name, whatever its figures or how it is written', () => {
  for (const { name, dalbergia } of WOODS) {
    expect(isDalbergia(name), name).toBe(dalbergia);
    expect(isDalbergia(` ${name.toUpperCase()} `), name).toBe(dalbergia);
  }
  expect(isDalbergia('Dalbergia nigra, from an old table')).toBe(true);
  expect(isDalbergia('my own maple')).toBe(false);
  expect(cautionFor('listed', 'Cocobolo').text).toBe(`${CHOSEN_IS_LISTED} ${CAUTIONS.listed.text}`);
  expect(cautionFor('listed', 'Purpleheart')).toEqual(CAUTIONS.listed);
  expect(cautionFor('dust', 'Cocobolo')).toEqual(CAUTIONS.dust);
});
