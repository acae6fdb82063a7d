import { EventEmitter } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { channels } from '../../electron/window/channels.ts';
import { drainBeforeQuit } from '../../electron/window/close-down.ts';
import { offerReload } from '../../electron/window/crashed-page.ts';
import { denyNavigation, denyPermissions } from '../../electron/window/lock-down.ts';
import { menuTemplate } from '../../electron/window/menu.ts';
import { PaperFileName } from '../../electron/window/paper-input.ts';
import { handlePapers } from '../../electron/window/papers.ts';
import {
  boundsFor,
  readWindowState,
  writeWindowState,
} from '../../electron/window/window-state.ts';
import { ownFrame, preventable, StandInIpcMain } from './stand-in-electron.ts';

type QuitApp = Parameters<typeof drainBeforeQuit>[0];
type PaperNeeds = Parameters<typeof handlePapers>[0];

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-window-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('permissions', () => {
  test('each is denied, asked for or checked', () => {
    const set: Record<string, (...args: unknown[]) => unknown> = {};
    const keep =
      (name: string) =>
      (handler: unknown): void => {
        set[name] = handler as (...args: unknown[]) => unknown;
      };
    denyPermissions({
      setPermissionRequestHandler: keep('request'),
      setPermissionCheckHandler: keep('check'),
      setDevicePermissionHandler: keep('device'),
    } as unknown as Parameters<typeof denyPermissions>[0]);
    const answers: boolean[] = [];
    for (const permission of ['media', 'geolocation', 'notifications', 'openExternal']) {
      set.request?.({}, permission, (granted: boolean) => answers.push(granted));
      answers.push(set.check?.({}, permission) as boolean);
    }
    answers.push(set.device?.({}) as boolean);
    expect(answers).toEqual(Array(9).fill(false));
  });
});

describe('navigation', () => {
  function lockedContents() {
    const app = new EventEmitter();
    denyNavigation(app as unknown as Parameters<typeof denyNavigation>[0]);
    let openHandler: (details: { url: string }) => { action: string } = () => ({ action: 'allow' });
    const contents = Object.assign(new EventEmitter(), {
      setWindowOpenHandler(handler: typeof openHandler) {
        openHandler = handler;
      },
    });
    app.emit('web-contents-created', {}, contents);
    const isPrevented = (name: string, url: string): boolean => {
      const event = preventable(url);
      contents.emit(name, event);
      return event.prevented;
    };
    return { isPrevented, open: (url: string) => openHandler({ url }).action };
  }

  test.each([
    ['will-navigate', 'https://shop.example/', true],
    ['will-navigate', 'file:///etc/passwd', true],
    ['will-navigate', 'tappet://desk.shop.example/', true],
    ['will-navigate', 'tappet://desk/bench', false],
    ['will-redirect', 'https://shop.example/', true],
    ['will-attach-webview', '', true],
    ['will-frame-navigate', 'https://shop.example/', true],
    ['will-frame-navigate', 'blob:tappet://desk/1b', false],
  ])('%s to %s is prevented: %s', (name, url, expected) => {
    expect(lockedContents().isPrevented(name, url)).toBe(expected);
  });

  test('no page opens a window', () => {
    for (const url of ['https://shop.example/', 'tappet://desk/', 'about:blank']) {
      expect(lockedContents().open(url)).toBe('deny');
    }
  });
});

describe('quitting', () => {
  test('waits until the calls are done and the store is closed, then goes on', async () => {
    const order: string[] = [];
    let closed: () => void = () => undefined;
    const app = Object.assign(new EventEmitter(), { quit: () => order.push('quit') });
    drainBeforeQuit(app as unknown as QuitApp, {
      close: () => {
        order.push('close');
        return new Promise((resolve) => {
          closed = resolve;
        });
      },
    });
    const first = preventable();
    app.emit('before-quit', first);
    expect({ prevented: first.prevented, order }).toEqual({ prevented: true, order: ['close'] });
    closed();
    await vi.waitFor(() => expect(order).toEqual(['close', 'quit']));
    const second = preventable();
    app.emit('before-quit', second);
    expect(second.prevented).toBe(false);
  });

  test('a store that will not close does not keep the program open', async () => {
    const silent = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    const quit = vi.fn();
    const app = Object.assign(new EventEmitter(), { quit });
    drainBeforeQuit(app as unknown as QuitApp, { close: () => Promise.reject(new Error('disk')) });
    app.emit('before-quit', preventable());
    await vi.waitFor(() => expect(quit).toHaveBeenCalledOnce());
    expect(silent).toHaveBeenCalledWith(expect.stringContaining('disk'));
    silent.mockRestore();
  });
});

describe('papers', () => {
  const pdf = new TextEncoder().encode('%PDF-1.7\n%%EOF\n');
  const owner = {} as NonNullable<ReturnType<PaperNeeds['windowOf']>>;

  function papers(answer: { canceled: boolean; filePath?: string }) {
    const ipcMain = new StandInIpcMain();
    const showSaveDialog = vi.fn(async () => answer);
    const showMessageBox = vi.fn(async () => ({ response: 0 }));
    const print = vi.fn(async () => true);
    handlePapers({
      ipcMain: ipcMain as unknown as PaperNeeds['ipcMain'],
      app: { getPath: () => '/documents' } as unknown as PaperNeeds['app'],
      dialog: { showSaveDialog, showMessageBox } as unknown as PaperNeeds['dialog'],
      windowOf: () => owner,
      print,
    });
    return { ipcMain, showSaveDialog, showMessageBox, print };
  }

  test('are kept where the person says', async () => {
    const filePath = join(folder, 'order.pdf');
    const { ipcMain, showSaveDialog } = papers({ canceled: false, filePath });
    expect(await ipcMain.invoke(channels.savePaper, ownFrame, 'Order 17', pdf)).toBe(true);
    expect(showSaveDialog).toHaveBeenCalledWith(
      owner,
      expect.objectContaining({ defaultPath: join('/documents', 'Order 17.pdf') }),
    );
    expect(new Uint8Array(readFileSync(filePath))).toEqual(pdf);
  });

  test('are not kept when the person thinks better of it', async () => {
    const { ipcMain } = papers({ canceled: true, filePath: join(folder, 'no.pdf') });
    expect(await ipcMain.invoke(channels.savePaper, ownFrame, 'no', pdf)).toBe(false);
    expect(existsSync(join(folder, 'no.pdf'))).toBe(false);
  });

  test('that can’t be kept are told of, and nothing is thrown at the page', async () => {
    const filePath = join(folder, 'no such folder', 'order.pdf');
    const { ipcMain, showMessageBox } = papers({ canceled: false, filePath });
    expect(await ipcMain.invoke(channels.savePaper, ownFrame, 'Order 17', pdf)).toBe(false);
    expect(showMessageBox).toHaveBeenCalledWith(
      owner,
      expect.objectContaining({ message: expect.stringContaining('Choose another folder') }),
    );
  });

  test('are printed for the window that asked', async () => {
    const { ipcMain, print } = papers({ canceled: true });
    expect(await ipcMain.invoke(channels.printPaper, ownFrame, pdf)).toBe(true);
    expect(print).toHaveBeenCalledWith(pdf, owner);
  });

  test.each([
    ['a frame within', { url: 'tappet://desk/', parent: {} }],
    ['another page', { url: 'https://shop.example/', parent: null }],
    ['nobody', null],
  ])('are refused to %s', async (_who, frame) => {
    const { ipcMain, showSaveDialog, print } = papers({ canceled: true });
    await expect(ipcMain.invoke(channels.savePaper, frame, 'a', pdf)).rejects.toThrow('Only');
    await expect(ipcMain.invoke(channels.printPaper, frame, pdf)).rejects.toThrow('Only');
    expect(showSaveDialog).not.toHaveBeenCalled();
    expect(print).not.toHaveBeenCalled();
  });

  test.each([
    ['no bytes', 'text'],
    ['no PDF', new TextEncoder().encode('<html>')],
    ['nothing', undefined],
    ['an array', [37, 80, 68, 70, 45]],
  ])('%s is refused', async (_what, content) => {
    const { ipcMain, showSaveDialog, print } = papers({ canceled: true });
    await expect(ipcMain.invoke(channels.savePaper, ownFrame, 'a', content)).rejects.toThrow();
    await expect(ipcMain.invoke(channels.printPaper, ownFrame, content)).rejects.toThrow();
    expect(showSaveDialog).not.toHaveBeenCalled();
    expect(print).not.toHaveBeenCalled();
  });

  test.each([
    ['../../etc/passwd', 'etc passwd.pdf'],
    ['C:\\Windows\\x.pdf', 'C Windows x.pdf'],
    ['Łucja 山田.PDF', 'Łucja 山田.pdf'],
    ['..', 'paper.pdf'],
    ['con', 'paper.pdf'],
    ['order\n17', 'order 17.pdf'],
    ['run.exe', 'run.exe.pdf'],
  ])('the name %j becomes %j', (given, kept) => {
    expect(PaperFileName.parse(given)).toBe(kept);
  });
});

describe('where the window stood', () => {
  const display = { x: 0, y: 0, width: 1920, height: 1080 };
  const state = { x: 100, y: 50, width: 1400, height: 900, maximized: false };

  test('is kept and read again', () => {
    const file = join(folder, 'window.json');
    writeWindowState(file, state);
    expect(readWindowState(file)).toEqual(state);
  });

  test.each(['', '{', '[]', '{"x":0,"y":0,"width":1e9,"height":900,"maximized":false}'])(
    'is forgotten when the file holds %j',
    (content) => {
      const file = join(folder, 'window.json');
      writeFileSync(file, content);
      expect(readWindowState(file)).toBeUndefined();
    },
  );

  test('is taken again as long as it lies on a display', () => {
    const { maximized: _, ...bounds } = state;
    expect(boundsFor(state, [display], display)).toEqual(bounds);
    const right = { ...display, x: 1920 };
    expect(boundsFor({ ...state, x: 1500 }, [display, right], display)).toEqual({
      ...bounds,
      x: 1500,
    });
  });

  test('is given up when the display is gone, and is never too small to work in', () => {
    const first = { width: 1280, height: 800 };
    expect(boundsFor({ ...state, x: 5000 }, [display], display)).toEqual(first);
    expect(boundsFor({ ...state, y: -880 }, [display], display)).toEqual(first);
    expect(boundsFor(undefined, [display], display)).toEqual(first);
    expect(boundsFor({ ...state, width: 300, height: 300 }, [display], display)).toMatchObject({
      width: 900,
      height: 640,
    });
  });

  test('is given up when nobody could take hold of the title bar', () => {
    expect(boundsFor({ ...state, y: -40 }, [display], display)).toEqual({
      width: 1280,
      height: 800,
    });
  });

  test('begins no larger than there is room for', () => {
    const laptop = { x: 0, y: 0, width: 1366, height: 728 };
    expect(boundsFor(undefined, [laptop], laptop)).toEqual({ width: 1280, height: 728 });
  });
});

describe('a page that has crashed', () => {
  function crashed(response: number) {
    const webContents = new EventEmitter();
    const window = {
      webContents,
      isDestroyed: () => false,
      loadURL: vi.fn(async () => undefined),
      close: vi.fn(),
    };
    const ask = vi.fn(async () => ({ response }));
    offerReload(window as unknown as Parameters<typeof offerReload>[0], 'tappet://desk/', ask);
    return {
      window,
      ask,
      go: (reason: string) => webContents.emit('render-process-gone', {}, { reason }),
    };
  }

  test('is loaded again or closed, as the person likes', async () => {
    const again = crashed(0);
    again.go('crashed');
    await vi.waitFor(() => expect(again.window.loadURL).toHaveBeenCalledWith('tappet://desk/'));
    expect(again.window.close).not.toHaveBeenCalled();

    const enough = crashed(1);
    enough.go('oom');
    await vi.waitFor(() => expect(enough.window.close).toHaveBeenCalledOnce());
    expect(enough.window.loadURL).not.toHaveBeenCalled();
  });

  test('is not asked about when it only went', () => {
    const { ask, go } = crashed(0);
    go('clean-exit');
    expect(ask).not.toHaveBeenCalled();
  });
});

test('the menu edits and enlarges, and leads nowhere', () => {
  for (const platform of ['linux', 'win32', 'darwin'] as const) {
    const items = menuTemplate(platform).flatMap(({ submenu, ...item }) => [
      item,
      ...(Array.isArray(submenu) ? submenu : []),
    ]);
    const roles = items.map(({ role }) => role);
    expect(roles).toEqual(expect.arrayContaining(['editMenu', 'zoomIn', 'zoomOut', 'resetZoom']));
    expect(roles).not.toEqual(expect.arrayContaining(['toggleDevTools']));
    expect(roles).not.toContain('help');
    expect(items.filter(({ click }) => click)).toEqual([]);
  }
});
