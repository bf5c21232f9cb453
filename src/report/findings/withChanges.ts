import type { DesignText, Typed } from '../../design/design.ts';

/** The design with some of its fields typed anew: `group.field` → what is typed. */
export function withChanges(text: DesignText, changes: Readonly<Record<string, Typed>>): DesignText {
  const changed: Record<string, unknown> = { ...text };
  for (const [path, typed] of Object.entries(changes)) {
    const [group = '', key = ''] = path.split('.');
    changed[group] = { ...(changed[group] as object), [key]: typed };
  }
  return changed as unknown as DesignText;
}
