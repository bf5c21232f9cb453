import { Canvas } from '@react-three/fiber';
import { useCallback, useMemo, useRef, useState } from 'react';
import { NeutralToneMapping } from 'three';
import type { PartMesh } from '../../../workers/protocol.ts';
import type { Spot } from '../../report/findings/finding.ts';
import { CameraRig, FILL } from './CameraRig.tsx';
import { hasWebGl } from './hasWebGl.ts';
import { litEdges } from './litEdges.ts';
import { boxOf, meshVolume } from './meshFigures.ts';
import { type Direction, FIRST_VIEW, type Pose, SET_VIEWS, type SetView, setViewAt } from './pose.ts';
import { Scene } from './Scene.tsx';
import { SectionStrip } from './SectionStrip.tsx';
import { facing, kept, type Section, sectionAcross, type Telling, towardCut, within } from './section.ts';
import { segmentsOf } from './segmentsOf.ts';
import type { Stamp } from './stamp.ts';
import { useCut } from './useCut.ts';
import { ViewControls } from './ViewControls.tsx';
import { ViewRig } from './viewRig.ts';
import './viewport.css';

interface Props {
  readonly mesh: PartMesh | undefined;
  readonly stamp: Stamp;
  readonly dark: boolean;
  /** A group of the design, or a field's path such as `saddle.depth`: its edges light up. */
  readonly highlight?: string | undefined;
  /** Where a finding is: lines of points in the part, mm. Seen through the wood. */
  readonly found?: readonly (readonly Spot[])[] | undefined;
  readonly ends: readonly [left: string, right: string];
  readonly telling: Telling;
  /** What it is made of: the woods of the list have colours of their own. */
  readonly wood: string;
}

/** A cut leaves room for the strip below it. */
const CUT_FILL = 0.58;
const NOTHING = new Float32Array(0);
const RENDERER = {
  antialias: true,
  alpha: true,
  toneMapping: NeutralToneMapping,
  localClippingEnabled: true,
};

/**
 * The part in three dimensions, and how it is looked at. The root element says in data attributes what is shown:
 * data-triangles, data-stamp, data-volume (mm³, 2 decimals), data-section (`none`, or axis, place in mm and the side that
 * is kept, such as `x 12.50 +`), data-cut-area (mm², 2 decimals),
 * data-found (segments that show where a finding is).
 */
export function Viewport({ mesh, stamp, dark, highlight, found, ends, telling, wood }: Props) {
  const [drawable] = useState(hasWebGl);
  const [rig] = useState(() => new ViewRig());
  const [seen, setSeen] = useState<SetView>();
  const [parallel, setParallel] = useState(false);
  const [edges, setEdges] = useState(true);
  const [asked, setAsked] = useState<Section>();
  const beforeCut = useRef<Pose>(undefined);
  /** Whether it was facing the cut that took the perspective away. */
  const flattened = useRef(false);

  const box = useMemo(() => boxOf(mesh?.positions ?? NOTHING), [mesh]);
  const volume = useMemo(() => (mesh ? meshVolume(mesh) : 0), [mesh]);
  const sorted = useMemo(
    () =>
      mesh && highlight ? litEdges(mesh, box, highlight) : { lit: NOTHING, plain: mesh?.edges ?? NOTHING },
    [mesh, box, highlight],
  );
  const foundSegments = useMemo(() => segmentsOf(found ?? []), [found]);
  const section = useMemo(() => (asked && mesh ? within(asked, box) : undefined), [asked, mesh, box]);
  const cut = useCut(mesh, section);
  const onMove = useCallback(() => setSeen(setViewAt(rig.pose)), [rig]);

  const turnTo = (pose: Pose) => rig.turnTo(pose, !matchMedia('(prefers-reduced-motion: reduce)').matches);
  const look = (direction: Direction, points = mesh && kept(mesh.positions, box, section), fill = FILL) => {
    if (points) turnTo(rig.framing(points, direction, fill));
  };
  const showParallel = (on: boolean) => {
    // at once, so that what is framed next is framed for it
    rig.parallel = on;
    flattened.current = false;
    setParallel(on);
  };
  const faceCut = (section: Section) => {
    const flatten = !parallel;
    // in perspective the far lips of a cut would stand inside its face
    if (flatten) showParallel(true);
    flattened.current ||= flatten;
    look(facing(section), cut?.outline, CUT_FILL);
  };
  const cutAcross = (axis: Section['axis']) => {
    // After another cut the eye stands before that one: where it stood before the first says more.
    const eye = beforeCut.current ?? rig.heading;
    const next = sectionAcross(axis, box, eye, telling);
    setAsked(next);
    const direction = towardCut(next, eye) ?? (section && eye);
    if (direction && mesh) look(direction, kept(mesh.positions, box, next), CUT_FILL);
  };

  const setCutting = (cutting: boolean) => {
    if (cutting) {
      beforeCut.current = rig.heading;
      cutAcross('x');
      return;
    }
    setAsked(undefined);
    if (flattened.current) showParallel(false);
    // An eye that was brought to the cut would stand too near to the closed part.
    if (beforeCut.current) turnTo(beforeCut.current);
  };

  return (
    <div
      className="viewport"
      data-theme={dark ? 'dark' : 'light'}
      data-triangles={(mesh?.triangles.length ?? 0) / 3}
      data-stamp={stamp}
      data-volume={volume.toFixed(2)}
      data-section={
        section ? `${section.axis} ${section.at.toFixed(2)} ${section.keep > 0 ? '+' : '-'}` : 'none'
      }
      data-cut-area={(cut?.areaMm2 ?? 0).toFixed(2)}
      data-found={foundSegments.length / 6}
    >
      {drawable ? (
        <Canvas
          className="viewport-canvas"
          role="application"
          aria-label="The part in three dimensions. Arrow keys turn it, with Shift they move it; plus and minus zoom; Home fits it."
          tabIndex={0}
          frameloop="demand"
          dpr={[1, 2]}
          gl={RENDERER}
          onKeyDown={(event) => {
            if (event.ctrlKey || event.metaKey || event.altKey) return;
            if (event.key === 'Home') look(FIRST_VIEW);
            else if (!rig.press(event.key, event.shiftKey)) return;
            event.preventDefault();
          }}
          onPointerDown={(event) => event.currentTarget.focus({ preventScroll: true })}
        >
          <CameraRig rig={rig} parallel={parallel} points={mesh?.positions} onMove={onMove} />
          {mesh && (
            <Scene
              mesh={mesh}
              box={box}
              rig={rig}
              stamp={stamp}
              dark={dark}
              edges={edges}
              cut={cut}
              sorted={sorted}
              wood={wood}
              found={foundSegments}
            />
          )}
        </Canvas>
      ) : (
        <p className="viewport-calm">
          This browser can’t draw in three dimensions just now. Turn on “hardware acceleration” or “WebGL” in
          its settings, or use another browser. Numbers, drawings and files work all the same.
        </p>
      )}
      {drawable && !mesh && <p className="viewport-calm">The part appears here as soon as it can be made.</p>}
      {drawable && (
        <ViewControls
          disabled={!mesh}
          seen={seen}
          ends={ends}
          onLook={(view) => look(SET_VIEWS[view])}
          onFit={() => look(rig.heading)}
          parallel={parallel}
          onParallel={showParallel}
          edges={edges}
          onEdges={setEdges}
          cutting={asked !== undefined}
          onCutting={setCutting}
        />
      )}
      {section && (
        <SectionStrip
          section={section}
          box={box}
          onAxis={cutAcross}
          onChange={setAsked}
          onFace={() => faceCut(section)}
        />
      )}
    </div>
  );
}
