import type { DesignText } from '../../design/design.ts';

/** A starter on the guitar and under the strings of another design, which it need not fit as it is. */
export function keepGuitar(starter: DesignText, { guitar, action, strings }: DesignText): DesignText {
  return { ...starter, guitar: { ...guitar, name: starter.guitar.name }, action, strings };
}
