import type { FileWithHandle } from 'browser-fs-access';

/** Asks for a design file on disk. Rejects as `wasCancelled` tells when the asking is broken off. */
export async function chooseDesignFile(): Promise<FileWithHandle> {
  const { fileOpen } = await import('browser-fs-access');
  return fileOpen({
    description: 'Bridge designs',
    extensions: ['.json'],
    mimeTypes: ['application/json'],
    id: 'pinbridge-designs',
  });
}
