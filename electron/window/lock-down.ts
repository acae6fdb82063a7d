import type { App, Session, WebContents } from 'electron';
import { isOwnPage } from './scheme.ts';

/** Without handlers, Electron would grant every permission that a page asks for. */
export function denyPermissions(
  session: Pick<
    Session,
    'setPermissionRequestHandler' | 'setPermissionCheckHandler' | 'setDevicePermissionHandler'
  >,
): void {
  session.setPermissionRequestHandler((_contents, _permission, callback) => callback(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
}

function isOnTheWeb(address: string): boolean {
  return ['http:', 'https:'].includes(URL.parse(address)?.protocol ?? '');
}

/**
 * Keeps every page where it is: no other address, no new window, no embedded page of its own
 * rights. There are no links out of the program.
 */
export function denyNavigation(app: Pick<App, 'on'>): void {
  app.on('web-contents-created', (_event, contents: WebContents) => {
    contents.on('will-navigate', (event) => {
      if (!isOwnPage(event.url)) event.preventDefault();
    });
    contents.on('will-redirect', (event) => event.preventDefault());
    // A paper that is being shown may hold a link; the frame around it has to stay as well.
    contents.on('will-frame-navigate', (event) => {
      if (isOnTheWeb(event.url)) event.preventDefault();
    });
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}
