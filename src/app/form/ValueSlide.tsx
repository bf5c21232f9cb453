import type { NumberField } from '../../design/fields/kinds.ts';
import { readQuantity } from '../../design/quantity.ts';
import { placeOf, typedAt } from '../store/fieldAt.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { likeTyped } from './typedForm.ts';

/** A slide over a field's whole range. Keyboards step the field itself, so the slide is left out of their round. */
export function ValueSlide({ path, field }: { path: string; field: NumberField }) {
  const store = useAppStore();
  const typed = useApp(({ history }) => {
    const place = placeOf(path);
    return place ? typedAt(history.present, place) : '';
  });
  const shown = typeof typed === 'number' || typeof typed === 'string' ? typed : '';
  const read = readQuantity(shown, field.kind);
  return (
    <input
      className="slide"
      type="range"
      tabIndex={-1}
      aria-label="Slide the value"
      min={field.min}
      max={field.max}
      step={field.step}
      value={read.ok ? read.value : field.min}
      onPointerDown={() => store.hold(path)}
      onPointerUp={() => store.closeStep()}
      onPointerCancel={() => store.closeStep()}
      onChange={(event) => store.edit(path, likeTyped(Number(event.target.value), shown, field))}
    />
  );
}
