import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { chosenDataFolder } from './launch/data-folder.ts';
import { type DeskSession, openDeskFor } from './launch/desk-session.ts';
import { refusedExitCode } from './launch/exit-codes.ts';
import { parseWindowFlags } from './launch/flags.ts';
import { programRoot } from './launch/root.ts';
import { drainBeforeQuit } from './window/close-down.ts';
import { handOverDesk } from './window/desk-handover.ts';
import { denyNavigation, denyPermissions } from './window/lock-down.ts';
import { openMainWindow } from './window/main-window.ts';
import { handlePapers } from './window/papers.ts';
import { printInWindow } from './window/print-window.ts';
import { createPageResponder, scheme, schemePrivileges } from './window/scheme.ts';

const flags = parseWindowFlags(process.argv.slice(1), process.cwd());
const folder = chosenDataFolder(flags);
// Electron's own files go along with the data, which makes its lock one per data folder.
const stateFolder = join(folder, 'window');

function openWindow(): BrowserWindow {
  return openMainWindow({
    preload: join(programRoot, 'dist', 'electron', 'preload.cjs'),
    stateFolder,
  });
}

async function openShop(): Promise<DeskSession | undefined> {
  try {
    return await openDeskFor({ folder, demo: flags.demo }, app.getVersion());
  } catch (error) {
    dialog.showErrorBox('Tappet', error instanceof Error ? error.message : String(error));
    app.exit(refusedExitCode);
    return undefined;
  }
}

async function run(): Promise<void> {
  await app.whenReady();
  const desk = await openShop();
  if (!desk) return;
  Menu.setApplicationMenu(process.platform === 'darwin' ? Menu.getApplicationMenu() : null);
  denyPermissions(session.defaultSession);
  protocol.handle(scheme, createPageResponder(join(programRoot, 'dist', 'renderer')));
  handOverDesk(ipcMain, desk);
  handlePapers({
    ipcMain,
    app,
    dialog,
    windowOf: (event) => BrowserWindow.fromWebContents(event.sender),
    print: printInWindow,
  });
  drainBeforeQuit(app, desk);
  openWindow();
  app.on('second-instance', showWindow);
  app.on('activate', showWindow);
}

function showWindow(): void {
  const [window = openWindow()] = BrowserWindow.getAllWindows();
  if (window.isMinimized()) window.restore();
  window.focus();
}

mkdirSync(stateFolder, { recursive: true });
app.setPath('userData', stateFolder);
protocol.registerSchemesAsPrivileged([schemePrivileges]);
app.on('window-all-closed', () => app.quit());
denyNavigation(app);
if (app.requestSingleInstanceLock()) {
  void run();
} else {
  // The running one has been told and shows its window.
  app.quit();
}
