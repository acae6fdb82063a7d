/** The name under which a page posts its port to its own window, for the preload to pass on. */
export const deskHandover = 'tappet:desk';

/**
 * What the window's preload offers its page, and all that it offers. In a browser it is absent.
 * Each answers whether it was done; false means that the person thought better of it.
 */
export type DesktopBridge = {
  /** Asks where to keep a PDF and writes it there. */
  savePaper: (fileName: string, bytes: Uint8Array) => Promise<boolean>;
  /** Opens the print dialog for a PDF. */
  printPaper: (bytes: Uint8Array) => Promise<boolean>;
};
