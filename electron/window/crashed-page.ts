import type { BrowserWindow, Dialog } from 'electron';

/**
 * A page whose process is gone stays white. Tells of it, and loads the page again or closes the
 * window, as the person likes.
 */
export function offerReload(
  window: Pick<BrowserWindow, 'isDestroyed' | 'close' | 'loadURL'> & {
    webContents: Pick<BrowserWindow['webContents'], 'on'>;
  },
  address: string,
  ask: (options: Parameters<Dialog['showMessageBox']>[0]) => Promise<{ response: number }>,
): void {
  window.webContents.on('render-process-gone', async (_event, { reason }) => {
    if (reason === 'clean-exit') return;
    const { response } = await ask({
      type: 'error',
      title: 'Tappet',
      message: 'The window has stopped working.',
      detail: 'Nothing that was kept is lost. Load it again and go on where you were.',
      buttons: ['Load it again', 'Close Tappet'],
      defaultId: 0,
      cancelId: 1,
      noLink: true,
    });
    if (window.isDestroyed()) return;
    if (response === 0) await window.loadURL(address);
    else window.close();
  });
}
