import { join } from 'node:path';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { provideDataFolder } from '../db/data-folder.ts';
import { chosenDataFolder } from './launch/data-folder.ts';
import { type DeskSession, openDeskFor } from './launch/desk-session.ts';
import { refusedExitCode } from './launch/exit-codes.ts';
import { parseWindowFlags } from './launch/flags.ts';
import { programRoot } from './launch/root.ts';
import { drainBeforeQuit } from './window/close-down.ts';
import { handOverDesk } from './window/desk-handover.ts';
import { denyNavigation, denyPermissions } from './window/lock-down.ts';
import { openMainWindow } from './window/main-window.ts';
import { menuTemplate } from './window/menu.ts';
import { handlePapers } from './window/papers.ts';
import { printInWindow } from './window/print-window.ts';
import { createPageResponder, scheme, schemePrivileges } from './window/scheme.ts';

const flags = parseWindowFlags(process.argv.slice(1), process.cwd());
const folder = chosenDataFolder(flags);
// Electron's own files go along with the data, which makes its lock one per data folder.
const stateFolder = join(folder, 'window');

let mainWindow: BrowserWindow | undefined;

/** The one window, opened if there is none; views of papers are windows of their own. */
function theWindow(): BrowserWindow {
  if (mainWindow === undefined) {
    mainWindow = openMainWindow({
      preload: join(programRoot, 'dist', 'electron', 'preload.cjs'),
      stateFolder,
    });
    mainWindow.on('closed', () => {
      mainWindow = undefined;
    });
  }
  return mainWindow;
}

function showWindow(): void {
  const window = theWindow();
  if (window.isMinimized()) window.restore();
  window.focus();
}

function giveUp(error: unknown): void {
  dialog.showErrorBox('Tappet', error instanceof Error ? error.message : String(error));
  app.exit(refusedExitCode);
}

function open(desk: DeskSession): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform)));
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
  theWindow();
  app.on('second-instance', showWindow);
  app.on('activate', showWindow);
}

async function run(): Promise<void> {
  try {
    await app.whenReady();
    open(await openDeskFor({ folder, demo: flags.demo }, app.getVersion()));
  } catch (error) {
    giveUp(error);
  }
}

app.enableSandbox();
protocol.registerSchemesAsPrivileged([schemePrivileges]);
app.on('window-all-closed', () => app.quit());
denyNavigation(app);
try {
  provideDataFolder(stateFolder);
  app.setPath('userData', stateFolder);
  // A running one has been told by this, and shows its window.
  if (app.requestSingleInstanceLock()) void run();
  else app.quit();
} catch (error) {
  giveUp(error);
}
