import './link.ts';

function pdfBlob(bytes: Uint8Array<ArrayBuffer>): Blob {
  return new Blob([bytes], { type: 'application/pdf' });
}

/** The bytes of a PDF that came as base64. */
export function paperBytes(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
}

/** Keeps a PDF as a file: by the system's dialog in the window, as a download in a browser. */
export async function savePaper(
  fileName: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> {
  if (window.tappetDesktop) return window.tappetDesktop.savePaper(fileName, bytes);
  const address = URL.createObjectURL(pdfBlob(bytes));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // The download has its own hold on the bytes once it has begun.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return true;
}

/** Prints a PDF: by the window's dialog, or by the browser's from a frame that nobody sees. */
export async function printPaper(bytes: Uint8Array<ArrayBuffer>): Promise<boolean> {
  if (window.tappetDesktop) return window.tappetDesktop.printPaper(bytes);
  const address = URL.createObjectURL(pdfBlob(bytes));
  const frame = document.createElement('iframe');
  frame.title = 'Paper to be printed';
  // One that is not laid out at all prints an empty page.
  Object.assign(frame.style, {
    position: 'fixed',
    right: '0',
    bottom: '0',
    width: '1px',
    height: '1px',
    border: '0',
    opacity: '0',
  });
  frame.src = address;
  await new Promise((resolve) => {
    frame.addEventListener('load', resolve, { once: true });
    document.body.append(frame);
  });
  frame.contentWindow?.print();
  // The dialog reads from the frame as long as it is open, and says nothing when it closes.
  setTimeout(() => {
    frame.remove();
    URL.revokeObjectURL(address);
  }, 10 * 60_000);
  return true;
}
