import type { App } from 'electron';
import type { DeskSession } from '../launch/desk-session.ts';

/** Quits only after the calls in flight are done and the store is closed. */
export function drainBeforeQuit(
  app: Pick<App, 'on' | 'quit'>,
  session: Pick<DeskSession, 'close'>,
): void {
  let closed = false;
  app.on('before-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    session
      .close()
      .catch((error: unknown) => {
        process.stderr.write(`The store was not closed as it should be: ${String(error)}\n`);
      })
      .finally(() => {
        closed = true;
        app.quit();
      });
  });
}
