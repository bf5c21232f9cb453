import { useMemo } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { findingsOf } from '../store/findingsOf.ts';
import { shownPart } from '../store/shownPart.ts';
import { useApp } from '../store/useApp.ts';
import { useDark } from '../useDark.ts';
import { Viewport } from '../viewport/Viewport.tsx';
import { tellingCuts } from './tellingCuts.ts';

/** The treble strings of a right-handed guitar lie toward +X. */
const ENDS = {
  right: ['bass end', 'treble end'],
  left: ['treble end', 'bass end'],
} as const;

/** The part in three dimensions: the best one there is, and how it stands to the design. */
export function PartView() {
  const { mesh, stamp } = useApp(useShallow(shownPart));
  const selected = useApp(({ session }) => session.selected);
  const curves = useApp(({ lastGood }) => lastGood?.curves);
  const hand = useApp(({ lastGood }) => lastGood?.design.guitar.hand);
  const wood = useApp(({ lastGood }) => lastGood?.design.timber.name ?? '');
  const telling = useMemo(() => (curves ? tellingCuts(curves) : {}), [curves]);
  const place = useApp(({ lastGood, session }) =>
    lastGood && session.finding !== undefined
      ? findingsOf(lastGood).find(({ id }) => id === session.finding)?.place
      : undefined,
  );
  const dark = useDark();
  return (
    <Viewport
      mesh={mesh}
      stamp={stamp}
      dark={dark}
      ends={ENDS[hand ?? 'right']}
      telling={telling}
      wood={wood}
      found={place}
      {...(selected !== undefined && { highlight: selected })}
    />
  );
}
