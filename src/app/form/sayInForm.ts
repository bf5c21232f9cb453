import { given, mend, type Problem } from '../../design/problem.ts';
import { placeName } from './placeName.ts';

/** A problem in one line, under the name that the form has for its place. */
export function sayInForm(problem: Problem): string {
  return `${placeName(problem.path)}: ${given(problem)}. ${mend(problem)}`;
}
