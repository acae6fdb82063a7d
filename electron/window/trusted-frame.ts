import { isOwnPage } from './scheme.ts';

/** As much of Electron's WebFrameMain as the check needs. */
type Frame = { url: string; parent: unknown };

/**
 * The one gate of all that the page sends to the main process: it must be the top frame of a window
 * and show our own page. Electron gives no frame when it is gone by now.
 */
export function isTrustedFrame(frame: Frame | null | undefined): boolean {
  return frame !== null && frame !== undefined && frame.parent === null && isOwnPage(frame.url);
}
