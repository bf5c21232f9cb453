import { OrthographicCamera, PerspectiveCamera, Vector3 } from 'three';
import { expect, test, vi } from 'vitest';
import { FIRST_VIEW, type Pose } from '../../../src/app/viewport/pose.ts';
import { ViewRig } from '../../../src/app/viewport/viewRig.ts';

const POSE: Pose = { azimuth: 25, elevation: 40, target: [3, -2, 4], reach: 60 };

function expectPose(actual: Pose, wanted: Pose) {
  for (const key of ['azimuth', 'elevation', 'reach'] as const)
    expect(actual[key], key).toBeCloseTo(wanted[key], 6);
  actual.target.forEach((value, k) => {
    expect(value, `target ${'xyz'[k]}`).toBeCloseTo(wanted.target[k] as number, 6);
  });
}

function rigAt(pose: Pose): ViewRig {
  const rig = new ViewRig();
  rig.resize(800, 400);
  rig.pose = pose;
  return rig;
}

test('a pose set is the pose read, by either camera', () => {
  const rig = rigAt(POSE);
  expectPose(rig.pose, POSE);
  rig.parallel = true;
  expectPose(rig.pose, POSE);
});

test('parallel and back keeps the framing: a point of the target plane stays where it was', () => {
  const rig = rigAt(POSE);
  const place = () => {
    const { camera } = rig;
    camera.updateMatrixWorld();
    const right = new Vector3().setFromMatrixColumn(camera.matrixWorld, 0);
    return new Vector3(...POSE.target).addScaledVector(right, 30).project(camera).x;
  };
  const before = place();
  expect(rig.camera).toBeInstanceOf(PerspectiveCamera);
  rig.parallel = true;
  expect(rig.camera).toBeInstanceOf(OrthographicCamera);
  expect(place()).toBeCloseTo(before, 6);
  rig.parallel = false;
  expect(place()).toBeCloseTo(before, 6);
});

test('straight above and below, +x stays to the right', () => {
  for (const elevation of [90, -90]) {
    const { camera } = rigAt({ ...POSE, azimuth: 0, elevation });
    expect(new Vector3().setFromMatrixColumn(camera.matrixWorld, 0).x).toBeCloseTo(1, 6);
  }
});

test.each([false, true])('keys turn and zoom (parallel: %s)', (parallel) => {
  const rig = rigAt(POSE);
  rig.parallel = parallel;
  expect(rig.moved).toBe(false);
  expect(rig.press('ArrowRight', false)).toBe(true);
  expect(rig.pose.azimuth, 'the part turns to the right, the eye to the left').toBeCloseTo(20, 6);
  rig.press('ArrowDown', false);
  expect(rig.pose.elevation, 'the part tips down, the eye rises').toBeCloseTo(45, 6);
  rig.press('+', false);
  expect(rig.pose.reach).toBeLessThan(POSE.reach);
  rig.press('-', false);
  expect(rig.pose.reach).toBeCloseTo(POSE.reach, 6);
  expect(rig.press('a', false)).toBe(false);
  expect(rig.moved).toBe(true);
});

test('a glide ends in its pose; without one the pose is there at once; both tell of the move', () => {
  vi.useFakeTimers({ toFake: ['performance'] });
  try {
    const rig = rigAt(POSE);
    const told = vi.fn();
    rig.onMove = told;
    const goal: Pose = { ...FIRST_VIEW, target: [0, 0, 0], reach: 30 };
    rig.turnTo(goal, true);
    expectPose(rig.pose, POSE);
    expectPose(rig.heading, goal);
    vi.advanceTimersByTime(100);
    rig.step();
    expect(rig.pose.reach).toBeLessThan(60);
    expect(rig.pose.reach).toBeGreaterThan(30);
    vi.advanceTimersByTime(1000);
    rig.step();
    expectPose(rig.pose, goal);
    expect(told).toHaveBeenCalled();
    expectPose(rig.heading, goal);
    rig.turnTo(POSE, false);
    expectPose(rig.pose, POSE);
  } finally {
    vi.useRealTimers();
  }
});

test('a pixel is as many mm as the view’s height says', () => {
  expect(rigAt(POSE).mmPerPixel).toBeCloseTo(120 / 400, 9);
});
