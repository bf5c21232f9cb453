/** Hands bytes to the browser to be saved under a name, where its owner has downloads go. */
export function download(name: string, bytes: Uint8Array): void {
  const address = URL.createObjectURL(
    new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/octet-stream' }),
  );
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser takes the bytes after the click; a minute is ample
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
