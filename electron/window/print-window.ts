import { rmSync } from 'node:fs';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { BrowserWindow } from 'electron';

/**
 * Shows a paper in Chromium's own PDF view and opens the system's print dialog over it. The view
 * stays, with a print button of its own, until the person closes it. It has no preload: nothing in
 * a paper can reach the desk. It is loaded from a file, which is the one way that Electron vouches
 * for with its PDF view; the file goes with the view.
 * @returns whether the person printed from the dialog
 */
export async function printInWindow(bytes: Uint8Array, owner: BrowserWindow): Promise<boolean> {
  const folder = await mkdtemp(join(tmpdir(), 'tappet-paper-'));
  const view = new BrowserWindow({
    parent: owner,
    width: 900,
    height: 1000,
    title: 'Paper',
    autoHideMenuBar: true,
    webPreferences: {
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      // The PDF view is a plug-in to Chromium.
      plugins: true,
    },
  });
  const closed = new Promise<boolean>((resolve) => {
    view.on('closed', () => {
      rmSync(folder, { recursive: true, force: true });
      resolve(false);
    });
  });
  try {
    const file = join(folder, 'paper.pdf');
    await writeFile(file, bytes, { mode: 0o600 });
    await view.loadURL(pathToFileURL(file).href);
  } catch (error) {
    if (view.isDestroyed()) return false;
    view.destroy();
    throw error;
  }
  if (view.isDestroyed()) return false;
  const printed = new Promise<boolean>((resolve) => {
    view.webContents.print({ silent: false }, resolve);
  });
  // Whoever closes the view has closed the dialog over it, which then says nothing.
  return Promise.race([printed, closed]);
}
