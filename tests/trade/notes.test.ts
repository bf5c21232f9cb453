import { describe, expect, test } from 'vitest';
import {
  CONCERT_A_HZ,
  frequencyNumber,
  noteFrequency,
  noteName,
  noteNumber,
  pitchFrequency,
} from '../../src/trade/notes.ts';

test.each([
  // derived from A = 440 (ISO 16, from memory)
  ['E2', 82.4069],
  ['A2', 110],
  ['D3', 146.8324],
  ['G3', 195.9977],
  ['B3', 246.9417],
  ['E4', 329.6276],
])('S1: %s is %s Hz', (name, hz) => {
  expect(Math.abs((pitchFrequency(name) ?? 0) - hz)).toBeLessThan(1e-4);
});

describe('note names', () => {
  // MIDI's numbers with middle C = C4 = 60 (common practice)
  test.each([
    ['E2', 40],
    ['F#3', 54],
    ['F♯3', 54],
    ['Bb3', 58],
    ['B♭3', 58],
    ['bb3', 58],
    ['b3', 59],
    [' e4 ', 64],
    ['C4', 60],
    ['Cb4', 59],
    ['B#3', 60],
    ['F##3', 55],
    ['Ebb4', 62],
    ['C-1', 0],
    ['G9', 127],
  ])('%s is %i', (name, number) => expect(noteNumber(name)).toBe(number));

  test.each(['', 'E', '4', 'H3', 'E#b4', 'E10', 'E2x', 'E 2', 'F###3', '--', 'e-2-'])('%j is none', (name) =>
    expect(noteNumber(name)).toBeUndefined(),
  );

  test('are read back from the number, with sharps and with flats', () => {
    for (let number = 0; number <= 127; number++) {
      expect(noteNumber(noteName(number))).toBe(number);
      expect(noteNumber(noteName(number, 'flat'))).toBe(number);
    }
    expect([noteName(54), noteName(54, 'flat'), noteName(58.4), noteName(0)]).toEqual([
      'F#3',
      'Gb3',
      'A#3',
      'C-1',
    ]);
  });
});

describe('pitches', () => {
  test('notes follow A; frequencies don’t', () => {
    expect(pitchFrequency('A4')).toBe(CONCERT_A_HZ);
    expect(pitchFrequency('A2', 432)).toBe(108);
    expect(pitchFrequency('98 Hz', 432)).toBe(98);
  });

  test.each([
    ['82.4', 82.4],
    ['82,4 Hz', 82.4],
    ['110hz', 110],
    ['.5', 0.5],
  ])('%j is %s Hz', (written, hz) => expect(pitchFrequency(written)).toBe(hz));

  test.each(['', '0', '0 Hz', '-5', '82.4 kHz', '1e3', 'Hz', 'E', 'NaN', 'Infinity'])(
    '%j is none',
    (written) => expect(pitchFrequency(written)).toBeUndefined(),
  );

  test('a frequency’s number counts semitones and cents from A', () => {
    for (const number of [28, 40.25, 69, 76.99])
      expect(frequencyNumber(noteFrequency(number, 443), 443)).toBeCloseTo(number, 10);
  });
});
