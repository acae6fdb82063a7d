import { join } from 'node:path';
import { BrowserWindow, screen } from 'electron';
import { pageOrigin } from './scheme.ts';
import { boundsFor, readWindowState, smallestWindow, writeWindowState } from './window-state.ts';

/** Opens the one window of the program. */
export function openMainWindow(options: { preload: string; stateFolder: string }): BrowserWindow {
  const stateFile = join(options.stateFolder, 'window.json');
  const saved = readWindowState(stateFile);
  const displays = screen.getAllDisplays().map(({ workArea }) => workArea);
  const window = new BrowserWindow({
    ...boundsFor(saved, displays),
    minWidth: smallestWindow.width,
    minHeight: smallestWindow.height,
    title: 'Tappet',
    show: false,
    autoHideMenuBar: true,
    webPreferences: {
      preload: options.preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webSecurity: true,
      spellcheck: false,
    },
  });
  if (saved?.maximized) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('close', () => {
    writeWindowState(stateFile, {
      ...window.getNormalBounds(),
      maximized: window.isMaximized(),
    });
  });
  void window.loadURL(`${pageOrigin}/`);
  return window;
}
