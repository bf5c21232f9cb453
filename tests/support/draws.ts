import type { DesignText, Typed } from '../../src/design/design.ts';
import { FORMAT, VERSION } from '../../src/design/design.ts';
import { type Field, isListField, isNumberField, type NumberField } from '../../src/design/fields/kinds.ts';
import { fieldsOf, GROUPS } from '../../src/design/fields.ts';
import { initialDesign } from '../../src/design/initial.ts';

/** What chance said about one field, before anything is known of the others. */
export interface Draw {
  /** `near`: within the bounds that the other fields suggest; `any`, `least`, `most`: of the field's own range. */
  readonly where: 'near' | 'any' | 'least' | 'most';
  /** 0 to 1: where within those bounds. */
  readonly share: number;
  /** How a number is written. */
  readonly written: 'bare' | 'stepped' | 'unit' | 'inches' | 'fraction';
  readonly text: string;
}

const IN = 25.4;

/** A design being put together, field by field, each drawn once; what is asked for again is remembered. */
export class Draws {
  private readonly typed = new Map<string, Typed>();
  private readonly values = new Map<string, number>();

  constructor(private readonly drawn: ReadonlyMap<string, Draw>) {}

  /**
   * Draws a number: usually between `low` and `high` (mm, degrees; kept within the table's range), now and then
   * anywhere in the table's range or at one of its ends. `skew` above 1 favours the low end.
   */
  number(path: string, low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY, skew = 1): number {
    const known = this.values.get(path);
    if (known !== undefined) return known;
    const field = tableField(path);
    if (!isNumberField(field)) throw new Error(`${path} is no number`);
    const draw = this.drawOf(path);
    // bounds that can't be worked out, under a crown that is none, are no bounds
    const [least, most] = [Number.isNaN(low) ? field.min : low, Number.isNaN(high) ? field.max : high];
    const [typed, value] = write(field, draw, pick(field, draw, least, most, skew));
    this.typed.set(path, typed);
    this.values.set(path, value);
    return value;
  }

  /** A number that is nothing at all with the given chance, where the table's range begins at 0. */
  orZero(path: string, chance: number): number {
    const { share } = this.drawOf(path);
    if (share >= chance) return this.number(path);
    this.typed.set(path, 0);
    this.values.set(path, 0);
    return 0;
  }

  choice(path: string): string {
    const known = this.typed.get(path);
    if (typeof known === 'string') return known;
    const field = tableField(path);
    if (field.kind !== 'choice') throw new Error(`${path} is no choice`);
    const keys = Object.keys(field.choices);
    const chosen = keys[Math.min(keys.length - 1, Math.floor(this.drawOf(path).share * keys.length))] ?? '';
    this.typed.set(path, chosen);
    return chosen;
  }

  /** Makes a choice that the fields before it leave no choice about. */
  choose(path: string, key: string): void {
    this.typed.set(path, key);
  }

  /**
   * A list of `count` numbers, the i-th usually between `low(i)` and `high(i)`; now and then a list of another length.
   * Where the table lets an entry be blank, most are.
   */
  list(
    path: string,
    count: number,
    low: (i: number) => number = () => Number.NEGATIVE_INFINITY,
    high: (i: number) => number = () => Number.POSITIVE_INFINITY,
  ): readonly number[] {
    const field = tableField(path);
    if (field.kind !== 'numbers' && field.kind !== 'measures') throw new Error(`${path} is no list`);
    const draw = this.drawOf(path);
    const wrong = draw.where === 'any' && draw.share < 0.3;
    const long = wrong ? 1 + Math.floor(draw.share * 39) : count;
    const range = { kind: field.of, min: field.min, max: field.max };
    const made = Array.from({ length: long }, (_, i) => {
      // each with a share of its own
      const share = spin(draw.share, i);
      if (field.kind === 'measures' && share < 0.8) return ['', Number.NaN] as const;
      // what may be but one thing is written so that it is that thing
      const written = low(i) === high(i) ? 'bare' : draw.written;
      return write(range, { ...draw, written }, pick(range, { ...draw, share }, low(i), high(i), 1));
    });
    this.typed.set(
      path,
      made.map(([typed]) => typed),
    );
    return made.map(([, value]) => value);
  }

  /** The notes of the strings, as given; now and then too few. */
  notes(path: string, notes: readonly string[]): void {
    const draw = this.drawOf(path);
    this.typed.set(
      path,
      draw.where === 'any' ? notes.slice(0, Math.ceil(draw.share * notes.length) || 1) : notes,
    );
  }

  /** What the program solves for a field: what is asked for from now on, whatever was typed. */
  solved(path: string, value: number): void {
    this.number(path);
    this.values.set(path, value);
  }

  /** The design so far: what was drawn, and the defaults. */
  soFar(): DesignText {
    const initial = initialDesign() as unknown as Record<string, Record<string, Typed>>;
    const groups = GROUPS.map((group) => [
      group,
      Object.fromEntries(
        Object.keys(fieldsOf(group)).map((key) => [
          key,
          this.typed.get(`${group}.${key}`) ?? initial[group]?.[key],
        ]),
      ),
    ]);
    return { format: FORMAT, version: VERSION, ...Object.fromEntries(groups) } as DesignText;
  }

  /** The whole design: what nobody asked for is drawn from its whole range. */
  finish(): DesignText {
    const groups = GROUPS.map((group) => [
      group,
      Object.fromEntries(
        Object.entries(fieldsOf(group)).map(([key, field]) => [key, this.typedAt(`${group}.${key}`, field)]),
      ),
    ]);
    return { format: FORMAT, version: VERSION, ...Object.fromEntries(groups) } as DesignText;
  }

  private typedAt(path: string, field: Field): Typed {
    const known = this.typed.get(path);
    if (known !== undefined) return known;
    if (field.kind === 'choice') return this.choice(path);
    if (field.kind === 'text') return this.drawOf(path).text.slice(0, field.maxLength);
    if (isListField(field)) throw new Error(`${path} is drawn with the strings`);
    this.number(path);
    return this.typed.get(path) as Typed;
  }

  private drawOf(path: string): Draw {
    const draw = this.drawn.get(path);
    if (!draw) throw new Error(`nothing was drawn for ${path}`);
    return draw;
  }
}

/** Every field's path, in the table's order. */
export const PATHS: readonly string[] = GROUPS.flatMap((group) =>
  Object.keys(fieldsOf(group)).map((key) => `${group}.${key}`),
);

/** The table's entry at `group.field`. */
export function tableField(path: string): Field {
  const [group, key] = path.split('.');
  const field = GROUPS.includes(group as never) ? fieldsOf(group as never)[key ?? ''] : undefined;
  if (!field) throw new Error(`the table has no ${path}`);
  return field;
}

/** What a drawn number needs to know of its field. */
type Range = Pick<NumberField, 'kind' | 'min' | 'max'> & { readonly step?: number };

function pick(field: Range, draw: Draw, low: number, high: number, skew: number): number {
  if (draw.where === 'least') return field.min;
  if (draw.where === 'most') return field.max;
  const clamp = (x: number) => Math.min(field.max, Math.max(field.min, x));
  const [from, to] = draw.where === 'any' ? [field.min, field.max] : [clamp(low), clamp(Math.max(low, high))];
  if (field.kind === 'count') return clamp(Math.floor(from) + Math.floor(draw.share * (to - from + 0.999)));
  return from + draw.share ** (draw.where === 'any' ? 1 : skew) * (to - from);
}

/** The value as a person might type it, and what that then means in the field's unit. */
function write(field: Range, draw: Draw, value: number): readonly [number | string, number] {
  const inside = (x: number) => x >= field.min && x <= field.max;
  const bare = Math.round(value * 1000) / 1000;
  const plain = inside(bare) ? bare : value;
  if (field.kind === 'count') return [value, value];
  if (draw.written === 'stepped' && field.step) {
    const stepped = Math.round(Math.round(value / field.step) * field.step * 1e6) / 1e6;
    return inside(stepped) ? [stepped, stepped] : [plain, plain];
  }
  if (field.kind !== 'length') return [plain, plain];
  if (draw.written === 'unit') return [`${plain} mm`, plain];
  if (draw.written === 'inches') {
    const inches = Math.round((value / IN) * 10000) / 10000;
    if (inside(inches * IN)) return [`${inches} in`, inches * IN];
  }
  if (draw.written === 'fraction') {
    const parts = Math.round((value / IN) * 64);
    const exact = (parts * IN) / 64;
    if (parts > 0 && inside(exact)) return [fraction(parts), exact];
  }
  return [plain, plain];
}

function fraction(parts: number): string {
  const [whole, rest] = [Math.floor(parts / 64), parts % 64];
  if (rest === 0) return `${whole}"`;
  return whole === 0 ? `${rest}/64 in` : `${whole} ${rest}/64"`;
}

/** Another share made from one, the same every time. */
function spin(share: number, i: number): number {
  return (share * 7.31 + i * 0.618034) % 1;
}
