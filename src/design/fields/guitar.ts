import { choice, count, type Field, length, text } from './kinds.ts';

export const guitar = {
  name: text('Name', 'Untitled bridge', 300, 'What this bridge is called; files are named after it.'),
  hand: choice(
    'Hand',
    { right: 'right-handed', left: 'left-handed' },
    'right',
    'A left-handed bridge is the mirror image: the slot leans the other way.',
  ),
  scale: length('Scale length', [480, 900], 645, 1, 'Nut to saddle before compensation.'),
  soundboard: choice(
    'Soundboard',
    { flat: 'flat', cylinder: 'arched across', sphere: 'domed' },
    'sphere',
    'How the top of the guitar is shaped under the bridge: flat, arched across the grain only, or domed both ways.',
  ),
  soundboardRadius: length(
    'Soundboard radius',
    [2000, 30000],
    '25 ft',
    100,
    'Radius of the dome or arch; 25 ft and 28 ft dishes are common.',
  ),
  fretboard: choice(
    'Fretboard',
    { constant: 'one radius', conical: 'conical' },
    'constant',
    'One radius from nut to end, or flatter toward the bridge.',
  ),
  fretboardRadius: length(
    'Fretboard radius',
    [150, 3000],
    '16 in',
    5,
    'Radius across the frets; at the nut when the fretboard is conical.',
  ),
  fretboardRadiusAtFret: length(
    'Radius further up',
    [150, 3000],
    '20 in',
    5,
    'Radius of a conical fretboard at the fret named below.',
  ),
  fretboardFret: count('…at fret', [5, 24], 20, 1, 'The fret at which the second radius was measured.'),
} as const satisfies Readonly<Record<string, Field>>;
