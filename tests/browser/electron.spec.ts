import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { _electron, expect, test } from '@playwright/test';
import { buildIfChanged } from '../../electron/launch/build.ts';
import { installedRuntime } from '../../electron/launch/desktop-runtime.ts';

const runtime = installedRuntime();
const hasDisplay =
  process.platform !== 'linux' || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY);

test('the window opens on our own scheme and reaches the desk', async ({
  browserName,
}, testInfo) => {
  testInfo.skip(
    runtime === undefined || !hasDisplay,
    `Electron's window needs its runtime and a display on this machine (${browserName} covers the rest).`,
  );
  await buildIfChanged('electron');
  const folder = mkdtempSync(join(tmpdir(), 'tappet-window-'));
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const root = resolve(import.meta.dirname, '..', '..');
  const app = await _electron.launch({
    executablePath: runtime,
    args: [...sandbox, root, '--data', folder],
  });
  try {
    const page = await app.firstWindow();
    expect(new URL(page.url()).protocol).toBe('tappet:');
    const seen = await page.evaluate(() => ({
      bridge: Object.keys(Reflect.get(window, 'tappetDesktop') ?? {}).sort(),
      node: typeof Reflect.get(window, 'require'),
    }));
    expect(seen).toEqual({ bridge: ['printPaper', 'savePaper'], node: 'undefined' });
    await expect(page.getByRole('main')).toBeVisible();
    // The handshake is made anew for a page that reloads.
    await page.reload();
    await expect(page.getByRole('main')).toBeVisible();
  } finally {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
