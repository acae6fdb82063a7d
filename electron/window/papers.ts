import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { App, BrowserWindow, Dialog, IpcMain, IpcMainInvokeEvent } from 'electron';
import { channels } from './channels.ts';
import { PaperBytes, PaperFileName } from './paper-input.ts';
import { isTrustedFrame } from './trusted-frame.ts';

type Needs = {
  ipcMain: Pick<IpcMain, 'handle'>;
  app: Pick<App, 'getPath'>;
  dialog: Pick<Dialog, 'showSaveDialog' | 'showMessageBox'>;
  windowOf: (event: IpcMainInvokeEvent) => BrowserWindow | null;
  print: (bytes: Uint8Array, owner: BrowserWindow) => Promise<boolean>;
};

/** The two things that a page may ask of the desktop: keep a paper as a file, and print it. */
export function handlePapers({ ipcMain, app, dialog, windowOf, print }: Needs): void {
  function ownerOf(event: IpcMainInvokeEvent): BrowserWindow {
    const owner = isTrustedFrame(event.senderFrame) ? windowOf(event) : null;
    if (!owner) throw new Error('Only the page of Tappet itself may save or print papers.');
    return owner;
  }

  ipcMain.handle(channels.savePaper, async (event, name: unknown, content: unknown) => {
    const owner = ownerOf(event);
    const fileName = PaperFileName.parse(name);
    const bytes = PaperBytes.parse(content);
    const { canceled, filePath } = await dialog.showSaveDialog(owner, {
      defaultPath: join(app.getPath('documents'), fileName),
      filters: [{ name: 'PDF', extensions: ['pdf'] }],
    });
    if (canceled || !filePath) return false;
    try {
      await writeFile(filePath, bytes);
      return true;
    } catch (error) {
      await dialog.showMessageBox(owner, {
        type: 'error',
        title: 'Tappet',
        message: 'The paper could not be kept there. Choose another folder and try again.',
        detail: error instanceof Error ? error.message : String(error),
      });
      return false;
    }
  });

  ipcMain.handle(channels.printPaper, async (event, content: unknown) => {
    const owner = ownerOf(event);
    return print(PaperBytes.parse(content), owner);
  });
}
