import { rmSync } from 'node:fs';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { BrowserWindow } from 'electron';

/**
 * Shows a paper in Chromium's own PDF view and opens the system's print dialog over it. The view
 * stays, with a print button of its own, until the person closes it. It has no preload: nothing in
 * a paper can reach the desk.
 * @returns whether the person printed from the dialog
 */
export async function printInWindow(bytes: Uint8Array, owner: BrowserWindow): Promise<boolean> {
  const folder = await mkdtemp(join(tmpdir(), 'tappet-paper-'));
  const file = join(folder, 'paper.pdf');
  await writeFile(file, bytes, { mode: 0o600 });
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
  view.on('closed', () => rmSync(folder, { recursive: true, force: true }));
  await view.loadURL(pathToFileURL(file).href);
  return new Promise((resolve) => {
    view.webContents.print({ silent: false }, (printed) => resolve(printed));
  });
}
