import { deskHandover } from '../../shared/desktop-bridge.ts';

/** The names under which page, preload and main process speak; nothing else passes. */
export const channels = {
  /** The page hands one end of a MessageChannel to the main process. */
  desk: deskHandover,
  savePaper: 'tappet:save-paper',
  printPaper: 'tappet:print-paper',
} as const;
