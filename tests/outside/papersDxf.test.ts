import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import DxfParser, {
  type ICircleEntity,
  type ILineEntity,
  type IPointEntity,
  type IPolylineEntity,
} from 'dxf-parser';
import { afterAll, describe, expect, test } from 'vitest';
import { chainLength, enclosedArea } from '../../models/curves/chain.ts';
import type { Curves } from '../../models/curves/curves.ts';
import { STARTER_FILES } from '../../src/cli/starterFiles.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import { bridgeDxf } from '../../src/files/bridgeDxf.ts';
import { acceptedDesigns } from '../support/designs.ts';
import { hasEzdxf, PYTHON, said } from '../support/outsideReaders.ts';
import { polylineFigures } from '../support/polylineFigures.ts';

// Read by dxf-parser (npm) and by ezdxf (Debian), which audits it too.

const starters = STARTER_FILES.map(({ name, json }) => ({ name, ...acceptDesign(json) }));
const random = acceptedDesigns(20, 77).accepted.map((one, i) => ({ name: `random ${i}`, ...one }));
const designs = [...starters, ...random];

const folder = mkdtempSync(path.join(tmpdir(), 'pinbridge-dxf-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function parsed(dxf: string) {
  const read = new DxfParser().parseSync(dxf);
  if (!read) throw new Error('dxf-parser read nothing');
  const on = <E>(layer: string, type: string) =>
    read.entities.filter((e) => e.layer === layer && e.type === type) as unknown as readonly E[];
  return { ...read, on };
}

describe.each(designs)('$name', ({ name, curves, design }) => {
  test.each(['drilled', 'reamed'] as const)('as %s: dxf-parser finds each thing on its layer', (holes) => {
    const read = parsed(bridgeDxf({ curves, design }, holes, name));
    expect(read.header.$ACADVER).toBe('AC1009');
    expect(read.header.$INSUNITS).toBe(4);
    const { lineType, layer } = read.tables;
    expect(Object.keys(layer.layers)).toEqual([
      'OUTLINE',
      'SLOT',
      'PINS',
      'PIN_MOUTHS',
      'PIN_CENTRES',
      'CENTRE',
    ]);
    expect(lineType.lineTypes.CENTER?.pattern).toEqual(['6', '-1', '0.6', '-1'].map(Number));

    const outline = read.on<IPolylineEntity>('OUTLINE', 'POLYLINE');
    expect(outline).toHaveLength(1);
    expect(outline[0]?.shape, 'closed').toBe(true);
    expect(outline[0]?.vertices.length, 'a corner a piece: no arc was cut up').toBe(curves.outline.length);
    const { area, length } = polylineFigures(outline[0]?.vertices ?? []);
    expect(Math.abs(area - enclosedArea(curves.outline)), 'area, mm²').toBeLessThan(1e-6);
    expect(Math.abs(length - chainLength(curves.outline)), 'length, mm').toBeLessThan(1e-6);

    const slot = read.on<IPolylineEntity>('SLOT', 'POLYLINE');
    const cut = polylineFigures(slot[0]?.vertices ?? []);
    // a stadium or a rectangle, by closed forms
    const [l, w] = [2 * curves.slot.halfLength, curves.slot.width];
    const round = curves.slot.roundEnds;
    expect(cut.area).toBeCloseTo(round ? (l - w) * w + (Math.PI * w * w) / 4 : l * w, 6);
    expect(cut.length).toBeCloseTo(round ? 2 * (l - w) + Math.PI * w : 2 * (l + w), 6);
    const [a, b] = slot[0]?.vertices ?? [];
    expect(Math.atan2((b?.y ?? 0) - (a?.y ?? 0), (b?.x ?? 0) - (a?.x ?? 0)), 'lies at its angle').toBeCloseTo(
      curves.slot.angle,
      8,
    );

    const circles = read.on<ICircleEntity>('PINS', 'CIRCLE');
    const points = read.on<IPointEntity>('PIN_CENTRES', 'POINT');
    expect([circles.length, points.length]).toEqual([design.strings.count, design.strings.count]);
    curves.pins.forEach(({ at }, i) => {
      for (const place of [circles[i]?.center, points[i]?.position]) {
        expect(Math.hypot((place?.x ?? 1e9) - at[0], (place?.y ?? 1e9) - at[1]), `pin ${i}`).toBeLessThan(
          1e-8,
        );
      }
      if (holes === 'drilled') expect(2 * (circles[i]?.radius ?? 0)).toBeCloseTo(design.pins.drill, 8);
    });
    const mouths = read.on<ICircleEntity>('PIN_MOUTHS', 'CIRCLE');
    const { bevel, bevelDiameter, mouth, drill, taper } = design.pins;
    const widest = bevel === 'cut' ? bevelDiameter : holes === 'reamed' && taper > 0 ? mouth : drill;
    if (widest > drill + 0.02) {
      expect(mouths).toHaveLength(design.strings.count);
      for (const { radius } of mouths) expect(2 * radius).toBeCloseTo(widest, 8);
    }
    const lines = read.on<ILineEntity>('CENTRE', 'LINE');
    expect(lines).toHaveLength(2 + 2 * design.strings.count);
  });
});

/** Prints ezdxf's audit and what it found, one object a file. */
const AUDIT = `
import json, sys
from collections import Counter
import ezdxf
for name in sys.argv[1:]:
  doc = ezdxf.readfile(name)
  audit = doc.audit()
  outline = doc.modelspace().query('POLYLINE[layer=="OUTLINE"]').first
  print(json.dumps({
    'version': doc.dxfversion, 'units': doc.units,
    'wrong': [str(e.message) for e in audit.errors + audit.fixes],
    'layers': sorted(layer.dxf.name for layer in doc.layers),
    'counts': Counter(e.dxf.layer + ' ' + e.dxftype() for e in doc.modelspace()),
    'linetype': doc.layers.get('CENTRE').dxf.linetype,
    'closed': outline.is_closed,
    'vertices': [{'x': v.dxf.location.x, 'y': v.dxf.location.y, 'bulge': v.dxf.get('bulge', 0)} for v in outline.vertices],
    'virtual': Counter(e.dxftype() for e in outline.virtual_entities()),
  }))`;

test.runIf(hasEzdxf)('ezdxf opens every one with nothing to mend, and finds the same', () => {
  const files = designs.map(({ curves, design, name }, i) => {
    const file = path.join(folder, `${i}.dxf`);
    writeFileSync(file, bridgeDxf({ curves, design }, 'drilled', `${name} “🪵”`));
    return file;
  });
  const out = said(PYTHON, '-c', AUDIT, ...files)
    .trim()
    .split('\n');
  expect(out).toHaveLength(designs.length);
  designs.forEach(({ curves, name, design }, i) => {
    const read = JSON.parse(out[i] ?? '') as Audit;
    expect(read, name).toMatchObject({
      version: 'AC1009',
      units: 4,
      wrong: [],
      linetype: 'CENTER',
      closed: true,
    });
    expect(read.layers).toEqual(expect.arrayContaining(['OUTLINE', 'SLOT', 'PINS', 'PIN_CENTRES', 'CENTRE']));
    expect(read.counts).toMatchObject({
      'OUTLINE POLYLINE': 1,
      'SLOT POLYLINE': 1,
      'PINS CIRCLE': design.strings.count,
      'PIN_CENTRES POINT': design.strings.count,
      'CENTRE LINE': 2 + 2 * design.strings.count,
    });
    expect(read.virtual, `${name}: arcs read as arcs, lines as lines`).toEqual(pieces(curves));
    const { area, length } = polylineFigures(read.vertices);
    expect(Math.abs(area - enclosedArea(curves.outline)), `${name}: area, mm²`).toBeLessThan(1e-6);
    expect(Math.abs(length - chainLength(curves.outline)), `${name}: length, mm`).toBeLessThan(1e-6);
  });
});

interface Audit {
  readonly layers: readonly string[];
  readonly counts: Readonly<Record<string, number>>;
  readonly virtual: Readonly<Record<string, number>>;
  readonly vertices: readonly { x: number; y: number; bulge: number }[];
}

/** How many lines and arcs an outline is made of. */
function pieces({ outline }: Curves): Record<string, number> {
  const [lines, arcs] = ['line', 'arc'].map((kind) => outline.filter((s) => s.kind === kind).length);
  return { ...(lines ? { LINE: lines } : {}), ...(arcs ? { ARC: arcs } : {}) };
}
