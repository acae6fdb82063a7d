import { join } from 'node:path';
import { BrowserWindow, dialog, screen } from 'electron';
import { offerReload } from './crashed-page.ts';
import { pageOrigin } from './scheme.ts';
import { boundsFor, readWindowState, smallestWindow, writeWindowState } from './window-state.ts';

/** Opens the one window of the program. */
export function openMainWindow(options: { preload: string; stateFolder: string }): BrowserWindow {
  const stateFile = join(options.stateFolder, 'window.json');
  const saved = readWindowState(stateFile);
  const displays = screen.getAllDisplays().map(({ workArea }) => workArea);
  const window = new BrowserWindow({
    ...boundsFor(saved, displays, screen.getPrimaryDisplay().workArea),
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
  window.once('ready-to-show', () => {
    // It would show an empty window if it came any earlier.
    if (saved?.maximized) window.maximize();
    window.show();
  });
  window.on('close', () => {
    writeWindowState(stateFile, {
      ...window.getNormalBounds(),
      maximized: window.isMaximized(),
    });
  });
  const address = `${pageOrigin}/`;
  offerReload(window, address, (question) => dialog.showMessageBox(window, question));
  void window.loadURL(address);
  return window;
}
