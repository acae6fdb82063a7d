import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeEach, expect, test, vi } from 'vitest';
import { printInWindow } from '../../electron/window/print-window.ts';

/** Stands in for a window that shows a PDF; the test answers for the print dialog. */
const { View, told } = await vi.hoisted(async () => {
  const { EventEmitter } = await import('node:events');
  const told = {
    opened: [] as InstanceType<typeof View>[],
    loading: async (): Promise<void> => undefined,
    answer: (_printed: boolean): void => undefined,
  };
  class View extends EventEmitter {
    url = '';
    private gone = false;
    readonly options: unknown;
    readonly webContents = {
      print: (_options: unknown, done: (printed: boolean) => void) => {
        told.answer = done;
      },
    };
    constructor(options: unknown) {
      super();
      this.options = options;
      told.opened.push(this);
    }
    async loadURL(url: string) {
      this.url = url;
      await told.loading();
    }
    isDestroyed = () => this.gone;
    destroy() {
      this.gone = true;
      this.emit('closed');
    }
  }
  return { View, told };
});
vi.mock('electron', () => ({ BrowserWindow: View }));

const noAnswer = (): void => undefined;
beforeEach(() => {
  told.opened.length = 0;
  told.answer = noAnswer;
});

const pdf = new TextEncoder().encode('%PDF-1.7\n%%EOF\n');
const owner = {} as Parameters<typeof printInWindow>[1];

async function begun() {
  const outcome = printInWindow(pdf, owner);
  await vi.waitFor(() => expect(told.answer).not.toBe(noAnswer));
  const [view] = told.opened;
  if (!view) throw new Error('No view was opened.');
  return { outcome, view, file: fileURLToPath(view.url) };
}

test('a paper is shown without a preload, printed, and its file goes with the view', async () => {
  const { outcome, view, file } = await begun();
  expect(view.options).toMatchObject({
    parent: owner,
    webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false },
  });
  expect(view.options).not.toHaveProperty('webPreferences.preload');
  expect(existsSync(file)).toBe(true);
  told.answer(true);
  expect(await outcome).toBe(true);
  view.destroy();
  expect(existsSync(file)).toBe(false);
});

test('a view that is closed over its dialog leaves nobody waiting', async () => {
  const { outcome, view } = await begun();
  view.destroy();
  expect(await outcome).toBe(false);
});

test('a view that can’t be shown is closed, with its file', async () => {
  told.loading = () => Promise.reject(new Error('ERR_FAILED'));
  await expect(printInWindow(pdf, owner)).rejects.toThrow('ERR_FAILED');
  const [view] = told.opened;
  expect(view?.isDestroyed()).toBe(true);
  expect(existsSync(fileURLToPath(String(view?.url)))).toBe(false);
});
