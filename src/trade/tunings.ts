/** A tuning: the open strings' notes from treble to bass. Common practice throughout. */
export interface Tuning {
  readonly name: string;
  readonly notes: readonly string[];
}

export const TUNINGS: readonly Tuning[] = [
  { name: 'Standard', notes: ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'] },
  { name: 'Half a step down', notes: ['Eb4', 'Bb3', 'Gb3', 'Db3', 'Ab2', 'Eb2'] },
  { name: 'A whole step down', notes: ['D4', 'A3', 'F3', 'C3', 'G2', 'D2'] },
  { name: 'Drop D', notes: ['E4', 'B3', 'G3', 'D3', 'A2', 'D2'] },
  { name: 'Double drop D', notes: ['D4', 'B3', 'G3', 'D3', 'A2', 'D2'] },
  { name: 'DADGAD', notes: ['D4', 'A3', 'G3', 'D3', 'A2', 'D2'] },
  { name: 'Open D', notes: ['D4', 'A3', 'F#3', 'D3', 'A2', 'D2'] },
  { name: 'Open G', notes: ['D4', 'B3', 'G3', 'D3', 'G2', 'D2'] },
  { name: 'Open C', notes: ['E4', 'C4', 'G3', 'C3', 'G2', 'C2'] },
  { name: 'Baritone C', notes: ['C4', 'G3', 'Eb3', 'Bb2', 'F2', 'C2'] },
  { name: 'Baritone B', notes: ['B3', 'F#3', 'D3', 'A2', 'E2', 'B1'] },
  { name: 'Baritone A', notes: ['A3', 'E3', 'C3', 'G2', 'D2', 'A1'] },
  { name: 'Seven strings, low B', notes: ['E4', 'B3', 'G3', 'D3', 'A2', 'E2', 'B1'] },
  // two unisons, then four octave pairs, each with its thin string on the bass side
  {
    name: 'Twelve strings',
    notes: ['E4', 'E4', 'B3', 'B3', 'G3', 'G4', 'D3', 'D4', 'A2', 'A3', 'E2', 'E3'],
  },
  {
    name: 'Twelve strings, a whole step down',
    notes: ['D4', 'D4', 'A3', 'A3', 'F3', 'F4', 'C3', 'C4', 'G2', 'G3', 'D2', 'D3'],
  },
];
