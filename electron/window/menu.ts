import type { MenuItemConstructorOptions } from 'electron';

/**
 * The menu is there for its keys: to edit, to make the letters larger and to fill the screen.
 * Electron's own menu would also open addresses on the web and the tools of programmers.
 */
export function menuTemplate(platform: NodeJS.Platform): MenuItemConstructorOptions[] {
  const view: MenuItemConstructorOptions = {
    label: 'View',
    submenu: [
      { role: 'resetZoom' },
      { role: 'zoomIn' },
      // On many keyboards the plus sign wants Shift, which people leave out.
      {
        role: 'zoomIn',
        accelerator: 'CommandOrControl+=',
        visible: false,
        acceleratorWorksWhenHidden: true,
      },
      { role: 'zoomOut' },
      { type: 'separator' },
      { role: 'togglefullscreen' },
    ],
  };
  return platform === 'darwin'
    ? [{ role: 'appMenu' }, { role: 'editMenu' }, view, { role: 'windowMenu' }]
    : [{ role: 'fileMenu' }, { role: 'editMenu' }, view];
}
