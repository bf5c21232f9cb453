import { OrthographicCamera, PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import {
  axesOf,
  between,
  type Direction,
  directionOf,
  distanceFor,
  FIRST_VIEW,
  HALF_ANGLE,
  type Pose,
  poseFraming,
  reachAt,
  SET_VIEWS,
  setViewAt,
} from '../../../src/app/viewport/pose.ts';

// The corners of a long, low block, far from the origin.
const CORNERS = new Float32Array(
  [-77, 77].flatMap((x) => [-17, 19].flatMap((y) => [-0.4, 9.6].flatMap((z) => [x + 5, y - 3, z]))),
);

/** Where three's own camera puts the corners: the box around them in the view, from −1 to 1. */
function seen(pose: Pose, aspect: number, parallel: boolean) {
  const { back } = axesOf(pose);
  const camera = parallel
    ? new OrthographicCamera(-pose.reach * aspect, pose.reach * aspect, pose.reach, -pose.reach, 0.1, 5000)
    : new PerspectiveCamera(2 * HALF_ANGLE, aspect, 0.1, 5000);
  camera.up.set(0, 0, 1);
  const target = new Vector3(...pose.target);
  // A hair off the pole, where three's lookAt knows no left or right.
  camera.position
    .set(...back)
    .multiplyScalar(parallel ? 600 : distanceFor(pose.reach))
    .add(target);
  if (Math.abs(pose.elevation) === 90) camera.position.y -= 1e-4;
  camera.lookAt(target);
  camera.updateMatrixWorld();
  const points = Array.from({ length: CORNERS.length / 3 }, (_, i) =>
    new Vector3().fromArray(CORNERS, 3 * i).project(camera),
  );
  const range = (values: number[]) => ({ low: Math.min(...values), high: Math.max(...values) });
  return { x: range(points.map(({ x }) => x)), y: range(points.map(({ y }) => y)) };
}

const directions: Record<string, Direction> = {
  ...SET_VIEWS,
  'at first': FIRST_VIEW,
  aslant: { azimuth: 130, elevation: -50 },
};

describe.each(Object.entries(directions))('%s', (_, direction) => {
  test.each([
    [1.9, false],
    [1.9, true],
    [0.7, false],
    [0.7, true],
  ])('the part fills 0.68 of a view of aspect %s, in the middle (parallel: %s)', (aspect, parallel) => {
    const { x, y } = seen(
      poseFraming(CORNERS, direction, { aspect, parallel, fill: 0.68 }),
      aspect,
      parallel,
    );
    expect(Math.max(x.high, -x.low, y.high, -y.low)).toBeCloseTo(0.68, 2);
    expect(Math.abs(x.high + x.low), 'left and right').toBeLessThan(0.02);
    expect(Math.abs(y.high + y.low), 'above and below').toBeLessThan(0.02);
  });
});

test('with nothing to frame, the view stays at the origin', () => {
  const frame = { aspect: 2, parallel: false, fill: 0.7 };
  expect(poseFraming(new Float32Array(0), FIRST_VIEW, frame).target).toEqual([0, 0, 0]);
});

test('direction and eye are each other’s inverse', () => {
  for (const direction of [FIRST_VIEW, { azimuth: 170, elevation: -80 }, { azimuth: -90, elevation: 0 }]) {
    const { azimuth, elevation } = directionOf(axesOf(direction).back);
    expect(azimuth).toBeCloseTo(direction.azimuth, 9);
    expect(elevation).toBeCloseTo(direction.elevation, 9);
  }
});

test('right, up and back are square to one another, right-handed', () => {
  const { right, up, back } = axesOf({ azimuth: 33, elevation: 21 });
  const cross = new Vector3(...right).cross(new Vector3(...up));
  expect(cross.distanceTo(new Vector3(...back))).toBeLessThan(1e-12);
});

test('each set view is known by its words, and a view aside of it by none', () => {
  for (const [view, direction] of Object.entries(SET_VIEWS)) expect(setViewAt(direction)).toBe(view);
  expect(setViewAt({ azimuth: 77, elevation: 89.9 }), 'turned about the vertical, still from above').toBe(
    'from above',
  );
  expect(setViewAt({ azimuth: 1, elevation: 0 })).toBeUndefined();
});

test('reach and distance are each other’s inverse', () => {
  expect(reachAt(distanceFor(42))).toBeCloseTo(42, 12);
});

test('a glide turns the short way round', () => {
  const from = { azimuth: 170, elevation: 0, target: [0, 0, 0], reach: 10 } as const;
  const to = { azimuth: -170, elevation: 40, target: [4, 0, 2], reach: 40 } as const;
  expect(between(from, to, 0.5)).toEqual({ azimuth: 180, elevation: 20, target: [2, 0, 1], reach: 20 });
  expect(between(from, to, 1).azimuth).toBe(190);
});
