import type { DesignText } from '../../design/design.ts';
import { isListField } from '../../design/fields/kinds.ts';
import { migrate } from '../../design/migrate.ts';
import { DesignError, type Problem } from '../../design/problem.ts';
import { readDesign } from '../../design/read.ts';
import { placeOf } from './fieldAt.ts';

/** What a person can put right in the form. Everything else means that the file is not such a design. */
const MENDABLE: readonly Problem['code'][] = [
  'not-a-value',
  'wrong-unit',
  'out-of-range',
  'not-a-choice',
  'does-not-fit',
];

/**
 * A design read for the form. Values that can't be made are kept as typed, so that they can be mended there.
 * Throws `DesignError` when it is no design, or holds what the form can't show.
 */
export function openText(json: unknown): DesignText {
  try {
    return readDesign(json).text;
  } catch (error) {
    if (!(error instanceof DesignError)) throw error;
    const beyond = error.problems.filter((p) => !MENDABLE.includes(p.code) || !showable(json, p.path));
    if (beyond.length > 0) throw new DesignError(beyond);
    return migrate(json as Readonly<Record<string, unknown>>) as unknown as DesignText;
  }
}

function showable(json: unknown, path: string): boolean {
  const place = placeOf(path);
  if (!place) return false;
  const given = (json as Readonly<Record<string, Readonly<Record<string, unknown>>>>)[place.group]?.[
    place.key
  ];
  if (isListField(place.field)) return Array.isArray(given) && given.every(plain);
  return plain(given);
}

function plain(value: unknown): boolean {
  return typeof value === 'string' || (typeof value === 'number' && Number.isFinite(value));
}
