import { EventEmitter } from 'node:events';
import { StandInIpcMain } from './stand-in-electron.ts';

type WindowOptions = { webPreferences: Record<string, unknown> };
type Responder = (request: { method: string; url: string }) => Promise<Response>;

/** What the stand-in was told, for the tests to look at. */
export const told = {
  paths: new Map<string, string>(),
  schemes: [] as { scheme: string; privileges: Record<string, boolean> }[],
  handled: new Map<string, Responder>(),
  windows: [] as { options: WindowOptions; loaded: string[] }[],
  menu: [] as unknown[],
  sandboxed: false,
  permission: [] as unknown[],
  order: [] as string[],
  locks: 0,
};

/** Stands in for the module `electron`, as far as main.ts and its helpers go. */
export const app = Object.assign(new EventEmitter(), {
  setPath: (name: string, path: string) => told.paths.set(name, path),
  getPath: () => '/documents',
  getVersion: () => '9.9.9',
  whenReady: async () => undefined,
  enableSandbox() {
    told.sandboxed = true;
  },
  requestSingleInstanceLock() {
    told.locks += 1;
    return true;
  },
  quit: () => told.order.push('quit'),
  exit: () => told.order.push('exit'),
});

export const ipcMain = new StandInIpcMain();

export class BrowserWindow extends EventEmitter {
  private static readonly all: BrowserWindow[] = [];
  static getAllWindows = () => BrowserWindow.all;
  static fromWebContents = () => null;
  private readonly loaded: string[] = [];
  readonly webContents = new EventEmitter();

  constructor(options: WindowOptions) {
    super();
    told.windows.push({ options, loaded: this.loaded });
    BrowserWindow.all.push(this);
  }
  async loadURL(url: string) {
    this.loaded.push(url);
  }
  isMinimized = () => true;
  restore = () => told.order.push('restore');
  focus = () => told.order.push('focus');
  show = () => told.order.push('show');
  maximize = () => undefined;
  isMaximized = () => false;
  getNormalBounds = () => ({ x: 1, y: 2, width: 1000, height: 700 });
}

export const dialog = {
  showErrorBox: (title: string, content: string) =>
    told.order.push(`error box: ${title}: ${content}`),
};
export const Menu = {
  buildFromTemplate: (template: unknown) => template,
  setApplicationMenu: (menu: unknown) => told.menu.push(menu),
};
export const protocol = {
  registerSchemesAsPrivileged: (schemes: typeof told.schemes) => told.schemes.push(...schemes),
  handle: (scheme: string, responder: Responder) => told.handled.set(scheme, responder),
};
const display = { workArea: { x: 0, y: 0, width: 1920, height: 1080 } };
export const screen = { getAllDisplays: () => [display], getPrimaryDisplay: () => display };
const keepPermission = (handler: unknown) => told.permission.push(handler);
export const session = {
  defaultSession: {
    setPermissionRequestHandler: keepPermission,
    setPermissionCheckHandler: keepPermission,
    setDevicePermissionHandler: keepPermission,
  },
};
