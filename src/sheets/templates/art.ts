import type { Box } from '../paper/box.ts';
import type { Ink } from '../sheet.ts';
import type { TemplateId } from './templateTitles.ts';

/** A template in the part's millimetres, which are the paper's: always full size. */
export interface Art {
  readonly id: TemplateId;
  readonly title: string;
  readonly inks: readonly Ink[];
  /** Round everything drawn. */
  readonly box: Box;
  /** How it is used. */
  readonly notes: readonly string[];
}
