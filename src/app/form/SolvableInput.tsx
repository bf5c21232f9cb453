import type { DesignText } from '../../design/design.ts';
import type { NumberField } from '../../design/fields/kinds.ts';
import type { SolvablePath } from '../../trade/fit/placeDesign.ts';
import { type Place, placeOf } from '../store/fieldAt.ts';
import { goodHere } from '../store/goodHere.ts';
import { choiceOf, howFound, setByHand, solvedAgain, waySolved } from '../store/solvedOrSet.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { FoundInput } from './FoundInput.tsx';
import type { InputProps } from './inputProps.ts';
import { QuantityInput } from './QuantityInput.tsx';
import { readable } from './readable.ts';

/**
 * A number that is solved from the guitar, with a mark to set it by hand; or one set by hand, with the solved number
 * beside it to go back to.
 */
export function SolvableInput(props: InputProps<NumberField>) {
  const { path, field } = props;
  const store = useAppStore();
  const place = placeOf(path) as Place;
  const how = useApp(({ history }) => howFound(history.present, place));
  const solved = useApp((state) => goodHere(state)?.fit.solved);
  const number = solved?.[path as SolvablePath].solved;

  if (how === 'wanted')
    return <QuantityInput {...props} field={{ ...field, label: `${field.label}, wanted` }} />;

  const change = (anew: (text: DesignText) => DesignText) => {
    store.replaceDesign(anew(store.getState().history.present));
    // the button goes with the press: the caret stays in its row
    store.callTo(path);
  };
  const word = wordOf(place);
  const unit = field.kind === 'angle' ? '°' : '';
  const said = number === undefined ? '' : ` ${readable(number)}${unit}`;
  if (how === 'set') {
    return (
      <QuantityInput {...props}>
        <button
          type="button"
          className="solved-mark beside"
          title="Press to go back to it"
          onClick={() => change((text) => solvedAgain(text, place))}
        >
          {word}
          <span className="number">{said}</span>
          <span className="unseen">: press to go back</span>
        </button>
      </QuantityInput>
    );
  }
  return (
    <FoundInput
      {...props}
      mark={word}
      value={number}
      onSet={() => change((text) => setByHand(text, place, solved))}
    />
  );
}

/** What the mark says: `solved`, or what is followed. */
function wordOf(place: Place): string {
  const field = choiceOf(place)?.field;
  const way = field && waySolved(field);
  return field?.kind === 'choice' && way && way !== 'solved' ? (field.choices[way] ?? way) : 'solved';
}
