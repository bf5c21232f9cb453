import { applies } from '../../design/applies.ts';
import { isListField, isNumberField } from '../../design/fields/kinds.ts';
import { given, mend, type Problem } from '../../design/problem.ts';
import { type Place, typedAt } from '../store/fieldAt.ts';
import { problemsAt } from '../store/judge.ts';
import { howFound, isSolvable, numberOf } from '../store/solvedOrSet.ts';
import { useApp } from '../store/useApp.ts';
import { ChoiceInput } from './ChoiceInput.tsx';
import { FollowingInput } from './FollowingInput.tsx';
import { fieldId } from './fieldId.ts';
import { QuantityInput } from './QuantityInput.tsx';
import { SolvableInput } from './SolvableInput.tsx';
import { TextInput } from './TextInput.tsx';
import { useCall } from './useCall.ts';

/**
 * One field of the form: its name, its input, and what is wrong with it. Nothing when it has no say and no fault, or when
 * another row says it: a choice between solved and set stands in its number's, lists stand in tables.
 */
export function FieldRow({ place }: { place: Place }) {
  const { path, field } = place;
  const typed = useApp((state) => typedAt(state.history.present, place));
  const problems = useApp((state) => problemsAt(state.history.present, path));
  const how = useApp(({ history }) => howFound(history.present, place));
  const says = useApp(({ history }) => numberOf(place) === undefined && applies(path, history.present));
  const shown = says || how !== undefined || problems.length > 0;
  const selected = useApp((state) => state.session.selected === path);
  const row = useCall(path);
  if (!shown || isListField(field)) return null;

  const id = fieldId(path);
  const common = {
    path,
    invalid: problems.length > 0,
    describedBy: problems.length > 0 ? `${id.problem} ${id.help}` : id.help,
  };
  return (
    <div ref={row} className={selected ? 'field selected' : 'field'} data-path={path}>
      {field.kind === 'choice' ? (
        <ChoiceInput {...common} field={field} typed={typed} />
      ) : field.kind === 'text' ? (
        <TextInput {...common} field={field} typed={typed} />
      ) : isNumberField(field) && problems.some(isOfTyping) ? (
        // whatever finds its number: what was typed can only be mended where it can be typed
        <QuantityInput {...common} field={field} typed={typed} />
      ) : how === 'follows' && isNumberField(field) ? (
        <FollowingInput {...common} field={field} typed={typed} />
      ) : isSolvable(field) ? (
        <SolvableInput {...common} field={field} typed={typed} />
      ) : (
        <QuantityInput {...common} field={field} typed={typed} />
      )}
      <p id={id.help} className="unseen">
        {field.help}
      </p>
      <div id={id.problem} className="problems" aria-live="polite">
        {problems.map((problem) => (
          <p key={`${problem.code} ${problem.path} ${problem.allowed}`}>
            {(how === 'solved' || how === 'follows') && !isOfTyping(problem)
              ? saySolved(problem)
              : mend(problem)}
          </p>
        ))}
      </div>
    </div>
  );
}

/** Whether a problem is with the characters typed, not with how dimensions fit together. */
function isOfTyping({ code }: Problem): boolean {
  return code === 'not-a-value' || code === 'wrong-unit' || code === 'out-of-range';
}

/** What was solved stands nowhere else while it can't be: the row shows the last good design's. */
function saySolved(problem: Problem): string {
  return `${given(problem)} does not fit. ${mend(problem)}`;
}
