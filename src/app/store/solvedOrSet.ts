import type { DesignText } from '../../design/design.ts';
import { type Field, isNumberField, type NumberField } from '../../design/fields/kinds.ts';
import { followedPath } from '../../design/followed.ts';
import type { Fit, SolvablePath } from '../../trade/fit/placeDesign.ts';
import { type Place, placeOf, placesOf, typedAt, withTyped } from './fieldAt.ts';

/** A number that is solved from the guitar or set by hand. */
type SolvableField = NumberField & { readonly by: string };

export function isSolvable(field: Field): field is SolvableField {
  return isNumberField(field) && field.by !== undefined;
}

/** The choice that says how a number is found; undefined for a number that is always typed. */
export function choiceOf(place: Place): Place | undefined {
  return isSolvable(place.field) ? placeOf(`${place.group}.${place.field.by}`) : undefined;
}

/** The number that a choice between solved and set speaks of; undefined for any other field. */
export function numberOf(place: Place): Place | undefined {
  return placesOf(place.group).find(({ field }) => isSolvable(field) && field.by === place.key);
}

/**
 * How a number is found: solved from the guitar, set by hand, wanted of a number that is solved (the showing, when the
 * thickness is), or following the aim. Undefined for a number that is always typed.
 */
export function howFound(
  text: DesignText,
  place: Place,
): 'solved' | 'set' | 'wanted' | 'follows' | undefined {
  const followed = followedPath(text.aim);
  if (followed === place.path) return 'follows';
  const choice = choiceOf(place);
  if (!choice) return undefined;
  if (place.path === 'saddle.showing' && text.top.thicknessBy === 'solved' && followed !== 'top.thickness')
    return 'wanted';
  return typedAt(text, choice) === 'set' ? 'set' : 'solved';
}

/**
 * The design with a solved number set by hand, to the very number that was solved, so that nothing in the part changes.
 * Where none was ever solved, what was last typed stands.
 */
export function setByHand(text: DesignText, place: Place, solved: Fit['solved'] | undefined): DesignText {
  const choice = choiceOf(place);
  if (!choice) return text;
  const number = solved?.[place.path as SolvablePath].solved;
  return withTyped(number === undefined ? text : withTyped(text, place, number), choice, 'set');
}

/** The design that aims at nothing any more, with what followed the aim set to what it came to. */
export function letGo(text: DesignText, place: Place, value: number | undefined): DesignText {
  const kept = value === undefined ? text : withTyped(text, place, value);
  const free = { ...kept, aim: { ...kept.aim, of: 'none' } };
  const choice = choiceOf(place);
  return choice ? withTyped(free, choice, 'set') : free;
}

/** The design with a number solved from the guitar again. What was set by hand stays in the file. */
export function solvedAgain(text: DesignText, place: Place): DesignText {
  const choice = choiceOf(place);
  const way = choice && waySolved(choice.field);
  return choice && way ? withTyped(text, choice, way) : text;
}

/** The choice's other value than `set`: `solved`, or the shape that is followed. */
export function waySolved(field: Field): string | undefined {
  return field.kind === 'choice' ? Object.keys(field.choices).find((value) => value !== 'set') : undefined;
}
