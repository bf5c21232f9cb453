import type { Curves } from '../models/curves/curves.ts';
import { createDrafter } from '../models/draft/draftMesh.ts';
import { loadKernel } from '../models/kernel/loadKernel.ts';
import { meshOf } from '../models/kernel/mesh.ts';
import { writeStep } from '../models/kernel/step.ts';
import { writeStl } from '../models/kernel/stl.ts';
import { type BridgeBuilder, createBridgeBuilder } from '../models/solid/bridge.ts';
import { surfaceFigures } from '../models/surface/figures.ts';
import { type AcceptedDesign, acceptDesign } from '../src/design/acceptDesign.ts';
import { initialDesign } from '../src/design/initial.ts';
import { findings } from '../src/report/findings/findings.ts';
import { judgedOf } from '../src/report/findings/judgedOf.ts';
import { partFigures } from '../src/report/partFigures.ts';
import { sensitivity } from '../src/report/sensitivity.ts';
import { fitReport } from '../src/trade/fit/fitReport.ts';
import { plainBuild } from './plainBuild.ts';

/**
 * `npm run bench`: medians in milliseconds, and ratios to `plainBuild` of the same part in the same run on the
 * single-thread kernel. Nothing here is a test.
 */
const RUNS = 7;

/** The default bridge with string channels, one field changed. */
const curvesWith = (change: (design: Record<string, Record<string, unknown>>) => void): Curves =>
  acceptedWith(change).curves;

function acceptedWith(change: (design: Record<string, Record<string, unknown>>) => void): AcceptedDesign {
  const text = JSON.parse(JSON.stringify(initialDesign())) as Record<string, Record<string, unknown>>;
  (text.pins as Record<string, unknown>).channel = 'ramp';
  // set by hand: what is solved would change with other fields than the one that is measured
  Object.assign(text.saddle as object, {
    angleBy: 'set',
    setbackBy: 'set',
    depthBy: 'set',
    showingBy: 'set',
  });
  Object.assign(text.top as object, { thicknessBy: 'set', thickness: 9.5 });
  change(text);
  return acceptDesign(text);
}

/** Everything that the page says of a design without a kernel, but what a tenth of each dimension would do. */
function figuresAndFindings(accepted: AcceptedDesign) {
  const report = fitReport(accepted.design, accepted.curves, accepted.fit);
  return [partFigures(accepted, report), findings(judgedOf(accepted, report))];
}

const base = curvesWith(() => {});

/** What changes when one field of a group does: two neighbours, so that each build finds the other's leavings. */
const CHANGES: Readonly<Record<string, readonly [Curves, Curves]>> = Object.fromEntries(
  (
    [
      ['footprint', 'length', 153, 154],
      ['top', 'tip', 3, 3.1],
      ['top', 'edgeSize', 1, 1.1],
      ['pins', 'mouth', 5.6, 5.7],
      // channels aim at the strings over the slot, so its angle cuts them anew; its depth cuts the slot alone
      ['saddle', 'angle', 2.9, 3],
      ['saddle', 'depth', 5.5, 5.6],
    ] as const
  ).map(([group, field, a, b]) => [
    `${group} (${field})`,
    [a, b].map((value) =>
      curvesWith((d) => {
        (d[group] as Record<string, unknown>)[field] = value;
      }),
    ) as [Curves, Curves],
  ]),
);

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1] as number;

async function timed(work: () => unknown): Promise<number> {
  const started = performance.now();
  await work();
  return performance.now() - started;
}

/** The steps of one slide in a round. */
const STEPS = 24;

/** The median step of work done for one thing after another, ms: of the second half, as in the middle of a slide. */
async function slide<T>(things: readonly T[], work: (thing: T) => unknown): Promise<number> {
  const steps: number[] = [];
  for (const thing of things) steps.push(await timed(() => work(thing)));
  return median(steps.slice(things.length >> 1));
}

/** How long the features took, as in the plain build, and how long the mesh and the gate after them, ms. */
async function cutThenChecked(
  builder: BridgeBuilder,
  curves: Curves,
): Promise<{ cut: number; checked: number }> {
  const started = performance.now();
  let finished = started;
  // the builder pauses before each feature, and once more when all are cut
  await builder.build(curves, 'reamed', async () => {
    finished = performance.now();
  });
  return { cut: finished - started, checked: performance.now() - finished };
}

const rows: [name: string, ms: number][] = [];
const say = (text: string) => process.stdout.write(`${text}\n`);

const drafter = await createDrafter();
const single = await loadKernel({ threads: false });
const several = await loadKernel({ threads: true });
const builders: readonly [name: string, BridgeBuilder][] = [
  ['one thread', createBridgeBuilder(single, (curves, holes) => drafter.draft(curves, holes).volumeMm3)],
  ['threads', createBridgeBuilder(several, (curves, holes) => drafter.draft(curves, holes).volumeMm3)],
];

// side by side: each round measures everything once, so that a slow moment of the machine falls on all
const times = new Map<string, number[]>();
const note = (name: string, ms: number) => times.set(name, [...(times.get(name) ?? []), ms]);
for (let run = 0; run <= RUNS; run++) {
  const keep = run === 0 ? () => {} : note; // the first round warms up
  keep('plain build, one thread', await timed(() => plainBuild(single, base)));
  for (const [name, builder] of builders) {
    builder.dispose();
    const full = await cutThenChecked(builder, base);
    keep(`full build, ${name}`, full.cut);
    keep(`mesh and gate, ${name}`, full.checked);
    for (const [change, [before, after]] of Object.entries(CHANGES)) {
      await builder.build(before, 'reamed');
      keep(`rebuild, ${change}, ${name}`, (await cutThenChecked(builder, after)).cut);
    }
  }
  // as under a slider: a new design each time, since what is known of a design is kept with it
  const slid = Array.from({ length: STEPS }, (_, i) =>
    acceptedWith((d) => {
      (d.top as Record<string, unknown>).tip = 3 + run / 10 + i / 100;
    }),
  );
  keep('draft', await slide(slid, ({ curves }) => drafter.draft(curves, 'reamed')));
  keep('surface: volume and centroid', await slide(slid, ({ curves }) => surfaceFigures(curves, 'reamed')));
  // what the surface kept of them is let go of
  const anew = slid.map(({ text }) => acceptDesign(text));
  keep('all figures and findings', await slide(anew, figuresAndFindings));
  keep(
    'what a tenth does',
    await slide(anew.slice(0, 4), ({ design, curves }) => sensitivity(design, curves)),
  );
  const aims = Array.from({ length: STEPS }, (_, i) => ({
    of: 'mass',
    mass: 26 + run / 10 + i / 100,
    follows: 'tip',
  }));
  keep(
    'a mass aimed at, the tip following',
    await slide(aims, (aim) =>
      acceptedWith((d) => {
        d.aim = { ...d.aim, ...aim };
      }),
    ),
  );
  const { shape } = await (builders[0] as [string, BridgeBuilder])[1].build(base, 'reamed');
  keep('mesh 0.02 mm', await timed(() => meshOf(single, shape, 0.02, 0.3)));
  keep('STEP', await timed(() => writeStep(single, shape, 'bench', 'AP214')));
  keep('STL 0.02 mm', await timed(() => writeStl(single, shape, 'bench', 0.02, 0.3)));
}
for (const [name, values] of times) rows.push([name, median(values)]);
const reference = rows.find(([name]) => name.startsWith('plain'))?.[1] ?? Number.NaN;
const draft = rows.find(([name]) => name === 'draft')?.[1] ?? Number.NaN;
say(`${`median of ${RUNS} rounds`.padEnd(52)}        ms   ratio to plain   to draft`);
for (const [name, ms] of rows) {
  const ratios = [(ms / reference).toFixed(3), (ms / draft).toFixed(2)];
  say(
    `${name.padEnd(52)} ${ms.toFixed(1).padStart(9)}   ${ratios[0]?.padStart(14)}   ${ratios[1]?.padStart(8)}`,
  );
}
process.exit(0);
