/** Keeps something as a file: as a download, for which the window asks where to. */
export function saveFile(fileName: string, content: BlobPart, mediaType: string): void {
  const address = URL.createObjectURL(new Blob([content], { type: mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The download has its own hold on the content once it has begun.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
