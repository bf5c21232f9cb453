import type { Curves } from '../../models/curves/curves.ts';
import { acceptDesign } from '../../src/design/acceptDesign.ts';
import type { Design, DesignText, Typed } from '../../src/design/design.ts';
import { enoughStrings } from '../../src/design/enoughStrings.ts';
import { initialDesign } from '../../src/design/initial.ts';
import { DesignError, type Problem } from '../../src/design/problem.ts';
import { readDesign } from '../../src/design/read.ts';

/** Changes to a design by path: `{ 'top.tip': 5 }`. A change may be anything at all, so that wrong ones can be tried. */
export type Changes = Readonly<Record<string, unknown>>;

/** A design with some of its fields changed. */
export function change(text: DesignText, changes: Changes): DesignText {
  const changed = structuredClone(text) as unknown as Record<string, Record<string, unknown>>;
  for (const [path, value] of Object.entries(changes)) {
    const [group = '', key = ''] = path.split('.');
    changed[group] = { ...changed[group], [key]: value };
  }
  const made = changed as unknown as DesignText;
  // a test that wants lists too short says so
  return 'strings.count' in changes ? enoughStrings(made) : made;
}

/**
 * Every number set by hand, so that a test which changes one sees it in the part; and numbers that the tests' closed forms
 * were worked out for.
 */
const SET: Changes = {
  'top.thicknessBy': 'set',
  'top.thickness': 9.5,
  'saddle.angleBy': 'set',
  'saddle.setbackBy': 'set',
  'saddle.depthBy': 'set',
  'saddle.showingBy': 'set',
  'saddle.showing': 3.2,
};

/** The design of all defaults, every number set by hand, with some fields changed, as typed. */
export const designText = (changes: Changes = {}): DesignText =>
  change(initialDesign(), { ...SET, ...changes });

/** The same, read: numbers in mm and degrees. */
export const design = (changes: Changes = {}): Design => readDesign(designText(changes)).design;

/** The same, drawn. */
export const curves = (changes: Changes = {}): Curves => acceptDesign(designText(changes)).curves;

/** Everything that validation finds wrong with a design: nothing when it can be made. */
export function problemsOf(text: unknown): readonly Problem[] {
  try {
    acceptDesign(text);
    return [];
  } catch (error) {
    if (error instanceof DesignError) return error.problems;
    throw error;
  }
}

/** What a piece of the program throws as a `DesignError`: nothing when it throws none. */
export function thrown(work: () => unknown): readonly Problem[] {
  try {
    work();
    return [];
  } catch (error) {
    if (error instanceof DesignError) return error.problems;
    throw error;
  }
}

/** The typed value at `group.field`. */
export function typedAt(text: DesignText, path: string): Typed {
  const [group = '', key = ''] = path.split('.');
  return (text as unknown as Record<string, Record<string, Typed>>)[group]?.[key] as Typed;
}
