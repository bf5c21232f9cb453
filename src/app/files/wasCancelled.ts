/** Whether a file dialog ended because the person closed it, which is no fault. */
export function wasCancelled(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}
