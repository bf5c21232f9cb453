import { expect, test } from 'vitest';
import { type PacketFile, packetName, packetNames } from '../../src/files/packetNames.ts';

const wild = [
  'Heron',
  'a/b\\c: "quoted" <x> |?*',
  '🪵🎸',
  '🪵',
  '..',
  'CON',
  'ü橋'.repeat(150),
  'x'.repeat(300),
  '𠮷'.repeat(150),
  ' ',
];

test('names say the design, its holes, and whether wood is left on what they show', () => {
  const names = packetNames('Heron', { holes: 'reamed', sandingAllowance: 0.2 });
  expect(names.step).toBe('Heron_as-reamed_allowance-0.2.step');
  expect(names.stl).toBe('Heron_as-reamed_allowance-0.2_mm.stl');
  expect(names.drawing).toBe('Heron_as-reamed_finished-size_drawing.pdf');
  expect(names.zip).toBe('Heron_as-reamed_allowance-0.2_packet.zip');
  expect(packetNames('Heron', { holes: 'drilled', sandingAllowance: 0 }).note).toBe(
    'Heron_as-drilled_no-allowance_job-note.pdf',
  );
});

test.each(wild)('%s: safe, all different, at most 100 characters and 255 bytes', (name) => {
  for (const sandingAllowance of [0, 0.12]) {
    const names = Object.values(packetNames(name, { holes: 'drilled', sandingAllowance }));
    expect(new Set(names.map((one) => one.toLowerCase())).size).toBe(names.length);
    for (const one of names) {
      expect(one).toMatch(
        /^[\p{L}\p{N}\p{M}-]+_as-drilled_(no-allowance|finished-size|allowance-0\.12)[\w.-]+$/u,
      );
      expect([...one].length, one).toBeLessThanOrEqual(100);
      expect(new TextEncoder().encode(one).length, one).toBeLessThanOrEqual(255);
    }
  }
});

test('what a packet is called among others stays as it is, and its end is kept', () => {
  for (const name of wild) {
    const second = packetName(name, '-2');
    expect(second).toMatch(/-2$/);
    expect(packetName(second)).toBe(second);
    const file: PacketFile = 'zip';
    expect(packetNames(second, { holes: 'drilled', sandingAllowance: 0 })[file]).toBe(
      `${second}_as-drilled_no-allowance_packet.zip`,
    );
  }
});
