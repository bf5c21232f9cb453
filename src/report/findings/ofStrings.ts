import type { Judged } from './finding.ts';

/** The strings of which something holds, counted from 0, treble first. */
export function stringsWhere({ accepted }: Judged, holds: (i: number) => boolean): readonly number[] {
  return accepted.fit.strings.flatMap((_, i) => (holds(i) ? [i] : []));
}

/** `string 1 (E4), string 2 (B3)` */
export function nameStrings({ accepted }: Judged, list: readonly number[]): string {
  return list.map((i) => `string ${i + 1} (${accepted.fit.strings[i]?.note ?? ''})`).join(', ');
}

/** Strings that the action puts under the bridge's top: what else is said of them means nothing. */
export function isUnder({ report }: Judged, i: number): boolean {
  return (report.saddle.stands[i]?.showing ?? 0) < 0;
}
