/** The ids that tie a field's input to its label, help and problems. */
export function fieldId(path: string) {
  const id = `field-${path.replaceAll('.', '-')}`;
  return { input: id, help: `${id}-help`, problem: `${id}-problem` };
}
