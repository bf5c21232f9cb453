import { OrthographicCamera, PerspectiveCamera } from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import {
  axesOf,
  between,
  type Direction,
  directionOf,
  distanceFor,
  type Frame,
  HALF_ANGLE,
  type Pose,
  poseFraming,
  reachAt,
} from './pose.ts';

/** mm from a parallel camera to its target: any part lies wholly before it. */
const AWAY = 600;
/** Half the height of a parallel camera's frame at zoom 1, mm. */
const HALF_FRAME = 50;
/** Degrees short of straight above or below, where left and right would be undefined. */
const SHORT_OF_POLE = 0.005;
const TURN_MS = 260;
const KEY_STEP_DEGREES = 5;
const KEY_STEP_PIXELS = 24;
const KEY_ZOOM = 0.88;

/** Two cameras, one of them in use, and the hand that moves it. A pose carries from one camera to the other. */
export class ViewRig {
  /** Called after every move. */
  onMove: () => void = () => {};
  /** Whether anyone has turned, moved or zoomed the view yet. */
  moved = false;

  readonly #perspective = new PerspectiveCamera(2 * HALF_ANGLE, 1, 2, 4000);
  readonly #parallel = new OrthographicCamera(-HALF_FRAME, HALF_FRAME, HALF_FRAME, -HALF_FRAME, 0.1, 4000);
  readonly #controls: OrbitControls;
  #height = 1;
  #turn: { from: Pose; to: Pose; since: number } | undefined;

  constructor() {
    for (const camera of [this.#perspective, this.#parallel]) camera.up.set(0, 0, 1);
    this.#controls = new OrbitControls(this.#perspective, null);
    this.#controls.zoomToCursor = true;
    this.#controls.minDistance = distanceFor(2);
    this.#controls.maxDistance = distanceFor(500);
    this.#controls.minZoom = HALF_FRAME / 500;
    this.#controls.maxZoom = HALF_FRAME / 2;
    this.#controls.addEventListener('change', () => this.onMove());
    this.#controls.addEventListener('start', () => {
      this.#touched();
    });
  }

  #touched() {
    this.#turn = undefined;
    this.moved = true;
  }

  get camera(): PerspectiveCamera | OrthographicCamera {
    return this.#controls.object as PerspectiveCamera | OrthographicCamera;
  }

  get #inParallel() {
    return this.camera === this.#parallel;
  }

  /** Takes the mouse and touch of an element; the answer lets go of them. */
  connect(element: HTMLElement): () => void {
    this.#controls.connect(element);
    return () => this.#controls.disconnect();
  }

  resize(width: number, height: number) {
    this.#height = Math.max(height, 1);
    const aspect = Math.max(width, 1) / this.#height;
    this.#perspective.aspect = aspect;
    this.#parallel.left = -HALF_FRAME * aspect;
    this.#parallel.right = HALF_FRAME * aspect;
    this.#perspective.updateProjectionMatrix();
    this.#parallel.updateProjectionMatrix();
  }

  get pose(): Pose {
    const { x, y, z } = this.camera.position.clone().sub(this.#controls.target);
    const reach = this.#inParallel ? HALF_FRAME / this.#parallel.zoom : reachAt(Math.hypot(x, y, z));
    return { ...directionOf([x, y, z]), target: this.#controls.target.toArray(), reach };
  }

  set pose(pose: Pose) {
    const limit = 90 - SHORT_OF_POLE;
    const elevation = Math.min(limit, Math.max(-limit, pose.elevation));
    const { back } = axesOf({ azimuth: pose.azimuth, elevation });
    const distance = this.#inParallel ? AWAY : distanceFor(pose.reach);
    this.#controls.target.set(...pose.target);
    this.camera.position
      .set(...back)
      .multiplyScalar(distance)
      .add(this.#controls.target);
    if (this.#inParallel) {
      this.#parallel.zoom = HALF_FRAME / pose.reach;
      this.#parallel.updateProjectionMatrix();
    }
    this.#controls.update();
    this.camera.updateMatrixWorld();
    this.onMove();
  }

  /** Changes the camera and keeps what is framed. */
  set parallel(parallel: boolean) {
    if (parallel === this.#inParallel) return;
    const { pose } = this;
    this.#controls.object = parallel ? this.#parallel : this.#perspective;
    this.pose = pose;
  }

  /** The pose that the view is turning to, or has. */
  get heading(): Pose {
    return this.#turn?.to ?? this.pose;
  }

  get mmPerPixel(): number {
    return (2 * this.pose.reach) / this.#height;
  }

  /** The pose that shows these points (xyz triples, mm) from a direction. */
  framing(points: Float32Array, direction: Direction, fill: number): Pose {
    const frame: Frame = { aspect: this.#perspective.aspect, parallel: this.#inParallel, fill };
    return poseFraming(points, direction, frame);
  }

  /** Turns to a pose, at once or in a short glide: then `step` must be called on every frame. */
  turnTo(pose: Pose, gliding: boolean) {
    this.#touched();
    if (gliding) {
      this.#turn = { from: this.pose, to: pose, since: performance.now() };
      this.onMove();
    } else this.pose = pose;
  }

  /** Moves on along a glide, as far as the clock says. */
  step() {
    const turn = this.#turn;
    if (!turn) return;
    const t = Math.min(1, (performance.now() - turn.since) / TURN_MS);
    if (t >= 1) this.#turn = undefined;
    this.pose = between(turn.from, turn.to, t * t * (3 - 2 * t));
  }

  /** Arrows turn the part their way, with Shift they move it; + and − zoom. Says whether the key was one of these. */
  press(key: string, shift: boolean): boolean {
    const arrow = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[key];
    if (arrow) {
      const [x, y] = arrow as [number, number];
      this.#touched();
      if (shift) this.#controls.pan(KEY_STEP_PIXELS * x, KEY_STEP_PIXELS * y);
      else {
        const angle = (KEY_STEP_DEGREES * Math.PI) / 180;
        if (x) this.#controls.rotateLeft(angle * x);
        if (y) this.#controls.rotateUp(angle * y);
      }
      return true;
    }
    if (!['+', '=', '-', '_', '−'].includes(key)) return false;
    this.#touched();
    if (key === '+' || key === '=') this.#controls.dollyIn(KEY_ZOOM);
    else this.#controls.dollyOut(KEY_ZOOM);
    return true;
  }
}
