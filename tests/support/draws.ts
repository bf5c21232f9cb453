import type { DesignText, Typed } from '../../src/design/design.ts';
import { FORMAT, VERSION } from '../../src/design/design.ts';
import { fieldsOf, GROUPS } from '../../src/design/fields.ts';
import type { Field, LengthsField, NumberField } from '../../src/design/fields/kinds.ts';

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
    if (!isNumber(field)) throw new Error(`${path} is no number`);
    const draw = this.drawOf(path);
    const [typed, value] = write(field, draw, pick(field, draw, low, high, skew));
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

  /** A list of `count` lengths; now and then of another length. */
  lengths(path: string, count: number): readonly number[] {
    const field = tableField(path);
    if (field.kind !== 'lengths') throw new Error(`${path} is no list`);
    const draw = this.drawOf(path);
    const long = draw.where === 'any' ? 1 + Math.floor(draw.share * 11.99) : count;
    const made = Array.from({ length: long }, (_, i) => {
      // thicker toward the bass, as strings are, and each with a share of its own
      const share = draw.where === 'near' ? (i / Math.max(1, long - 1)) * draw.share : spin(draw.share, i);
      const where = draw.where === 'least' || draw.where === 'most' ? draw.where : 'near';
      return write(
        field,
        { ...draw, where },
        pick(field, { ...draw, where, share }, field.min, field.max, 1),
      );
    });
    this.typed.set(
      path,
      made.map(([typed]) => typed as number | string),
    );
    return made.map(([, value]) => value);
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
    if (field.kind === 'lengths') this.lengths(path, 6);
    else this.number(path);
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

export function isNumber(field: Field): field is NumberField {
  return field.kind !== 'choice' && field.kind !== 'text' && field.kind !== 'lengths';
}

function pick(
  field: NumberField | LengthsField,
  draw: Draw,
  low: number,
  high: number,
  skew: number,
): number {
  if (draw.where === 'least') return field.min;
  if (draw.where === 'most') return field.max;
  const clamp = (x: number) => Math.min(field.max, Math.max(field.min, x));
  const [from, to] = draw.where === 'any' ? [field.min, field.max] : [clamp(low), clamp(Math.max(low, high))];
  if (field.kind === 'count') return clamp(Math.floor(from) + Math.floor(draw.share * (to - from + 0.999)));
  return from + draw.share ** (draw.where === 'any' ? 1 : skew) * (to - from);
}

/** The value as a person might type it, and what that then means in the field's unit. */
function write(
  field: NumberField | LengthsField,
  draw: Draw,
  value: number,
): readonly [number | string, number] {
  const inside = (x: number) => x >= field.min && x <= field.max;
  const bare = Math.round(value * 1000) / 1000;
  const plain = inside(bare) ? bare : value;
  if (field.kind === 'count') return [value, value];
  if (draw.written === 'stepped' && 'step' in field) {
    const stepped = Math.round(Math.round(value / field.step) * field.step * 1e6) / 1e6;
    return inside(stepped) ? [stepped, stepped] : [plain, plain];
  }
  if (field.kind !== 'length' && field.kind !== 'lengths') return [plain, plain];
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
