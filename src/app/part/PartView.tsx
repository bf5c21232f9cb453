import { useShallow } from 'zustand/react/shallow';
import { shownPart } from '../store/shownPart.ts';
import { useApp } from '../store/useApp.ts';
import { useDark } from '../useDark.ts';
import { Viewport } from '../viewport/Viewport.tsx';

/** The part in three dimensions: the best one there is, and how it stands to the design. */
export function PartView() {
  const { mesh, stamp } = useApp(useShallow(shownPart));
  const selected = useApp(({ session }) => session.selected);
  const dark = useDark();
  return (
    <Viewport
      mesh={mesh}
      stamp={stamp}
      dark={dark}
      {...(selected !== undefined && { highlight: selected })}
    />
  );
}
