import { GROUPS } from '../../design/fields.ts';
import { placeOf } from '../store/fieldAt.ts';
import { GROUP_NAMES } from './groupNames.ts';

/**
 * What the form calls the place of a path: `Top, wing tip`. A field that is named like its group is said once, and a
 * name that the form doesn't have stands as it is.
 */
export function placeName(path: string): string {
  const place = placeOf(path);
  const [group, key] = path.split('.');
  const known = GROUPS.find((name) => name === group);
  if (!known) return `“${group}”`;
  const head = GROUP_NAMES[known];
  if (key === undefined) return head;
  if (!place) return `${head}, “${key}”`;
  const label = place.field.label.toLowerCase();
  return label === head.toLowerCase() ? head : `${head}, ${label}`;
}
