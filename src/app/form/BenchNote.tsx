import { applies } from '../../design/applies.ts';
import { type Field, isNumberField, UNIT_OF } from '../../design/fields/kinds.ts';
import { roundForReading } from '../../design/problem.ts';
import { readQuantity } from '../../design/quantity.ts';
import { type Place, placeOf, typedAt } from '../store/fieldAt.ts';
import { choiceOf, howFound } from '../store/solvedOrSet.ts';
import { useApp } from '../store/useApp.ts';
import './bench-note.css';
import { ValueSlide } from './ValueSlide.tsx';

/** A note at the foot of the form on the selected field: what it is, what it may be, and a slide to move it. */
export function BenchNote() {
  const selected = useApp(({ session }) => session.selected);
  const place = selected === undefined ? undefined : placeOf(selected);
  const how = useApp(({ history }) => place && howFound(history.present, place));
  const has = useApp(
    ({ history }) => place !== undefined && (how !== undefined || applies(place.path, history.present)),
  );
  if (!place || !has) {
    return (
      <div className="bench-note" role="note">
        <p>
          Lengths are in millimetres; <kbd>3/8 in</kbd>, <kbd>1 1/2"</kbd> and <kbd>25 ft</kbd> are read too.
          Arrow keys step a number; the slide here moves it.
        </p>
      </div>
    );
  }
  return (
    <div className="bench-note about" role="note">
      <h3>
        {place.field.label} <span>{range(place.field)}</span>
      </h3>
      <p>
        {place.field.help} {how === 'solved' && choiceOf(place)?.field.help} <InMillimetres place={place} />
      </p>
      {isNumberField(place.field) && how !== 'solved' && how !== 'follows' && (
        <ValueSlide path={place.path} field={place.field} />
      )}
    </div>
  );
}

function range(field: Field): string {
  if (!('min' in field)) return '';
  const unit = UNIT_OF['of' in field ? field.of : field.kind];
  return `${String(field.min).replace('-', '−')} to ${field.max}${unit === '' || unit === '°' ? unit : ` ${unit}`}`;
}

/** What a length typed in another unit is in millimetres. */
function InMillimetres({ place }: { place: Place }) {
  const typed = useApp(({ history }) => typedAt(history.present, place));
  const how = useApp(({ history }) => howFound(history.present, place));
  if (
    how === 'solved' ||
    how === 'follows' ||
    place.field.kind !== 'length' ||
    typeof typed !== 'string' ||
    !/[a-z"″'′]/i.test(typed)
  )
    return null;
  const read = readQuantity(typed, 'length');
  return read.ok ? <span className="converted">{roundForReading(read.value)} mm.</span> : null;
}
