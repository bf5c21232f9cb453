import type { NumberField } from '../../design/fields/kinds.ts';
import { type Place, placeOf } from '../store/fieldAt.ts';
import { goodHere } from '../store/goodHere.ts';
import { letGo } from '../store/solvedOrSet.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import { FoundInput } from './FoundInput.tsx';
import type { InputProps } from './inputProps.ts';

/** A dimension that follows the aim. Setting it by hand gives the aim up. */
export function FollowingInput(props: InputProps<NumberField>) {
  const { path } = props;
  const store = useAppStore();
  const value = useApp((state) => {
    const aimed = goodHere(state)?.aimed;
    return aimed?.path === path ? aimed.value : undefined;
  });
  return (
    <FoundInput
      {...props}
      mark="follows the aim"
      value={value}
      onSet={() => {
        store.replaceDesign(letGo(store.getState().history.present, placeOf(path) as Place, value));
        // the mark goes with the press: the caret stays in its row
        store.callTo(path);
      }}
    />
  );
}
