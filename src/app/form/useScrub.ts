import { type MouseEvent, type PointerEvent, useRef } from 'react';
import type { NumberField } from '../../design/fields/kinds.ts';
import { useAppStore } from '../store/useApp.ts';
import { stepTyped } from './typedForm.ts';

/** Sideways travel that makes one step, px. */
const PX_PER_STEP = 4;
/** Travel below this is a press, px. */
const PRESS = 3;

interface Drag {
  readonly pointer: number;
  readonly x: number;
  readonly from: number | string;
  moving: boolean;
}

/** Handlers for a field's name that change its value while it is dragged sideways: to the right is more. */
export function useScrub(path: string, typed: number | string, field: NumberField) {
  const store = useAppStore();
  const drag = useRef<Drag | undefined>(undefined);
  const dragged = useRef(false);

  const end = () => {
    if (drag.current?.moving) store.closeStep();
    drag.current = undefined;
  };

  return {
    onPointerDown: (event: PointerEvent) => {
      dragged.current = false;
      if (event.button !== 0) return;
      drag.current = { pointer: event.pointerId, x: event.clientX, from: typed, moving: false };
    },
    onPointerMove: (event: PointerEvent) => {
      const { current } = drag;
      if (!current || current.pointer !== event.pointerId) return;
      const travel = event.clientX - current.x;
      if (!current.moving) {
        if (Math.abs(travel) < PRESS) return;
        current.moving = true;
        dragged.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        store.select(path);
        store.hold(path);
      }
      store.edit(path, stepTyped(current.from, field, Math.round(travel / PX_PER_STEP)));
    },
    onPointerUp: end,
    onPointerCancel: end,
    // a drag is not a press: the caret stays where it is
    onClick: (event: MouseEvent) => {
      if (dragged.current) event.preventDefault();
    },
  };
}
