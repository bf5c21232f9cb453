import { expect, test } from 'vitest';
import { braceSource, timberSource } from '../../src/trade/timberSource.ts';

const rosewood = { name: 'Indian rosewood', density: 849, stiffness: 12.27 };

test('a number of the list has the list’s source, a changed one is one’s own, each by itself', () => {
  expect(timberSource(rosewood, 'density')).toMatch(/^Chudnoff/);
  expect(timberSource(rosewood, 'stiffness')).toMatch(/^Chudnoff/);
  const lighter = { ...rosewood, density: 800 };
  expect(timberSource(lighter, 'density')).toBe('your own entry');
  expect(timberSource(lighter, 'stiffness')).toMatch(/^Chudnoff/);
  expect(timberSource({ ...rosewood, name: 'Apple' }, 'density')).toBe('your own entry');
});

test('a stiffness for which the list has none is said to have no source, whatever stands there', () => {
  for (const name of ['Cocobolo', 'Honduras rosewood']) {
    const timber = { name, density: name === 'Cocobolo' ? 1105 : 1009, stiffness: 12.27 };
    expect(timberSource(timber, 'stiffness')).toBe('your own; no source was found');
    expect(timberSource(timber, 'density')).toMatch(/^Chudnoff/);
  }
});

test('spruce is named only as long as the brace has its stiffness', () => {
  expect(braceSource(10.8)).toMatch(/^Sitka spruce.*from memory/);
  expect(braceSource(11)).toBe('your own entry');
});
