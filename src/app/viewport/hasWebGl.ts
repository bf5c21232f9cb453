/** Whether this browser can draw in three dimensions here and now. */
export function hasWebGl(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  // Browsers allow few contexts at once: give this one back.
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
