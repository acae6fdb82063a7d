import { backUpDaily } from '../desk/index.ts';
import type { DeskSession } from './desk-session.ts';

/** A program that stays open over midnight notices the new day so soon, milliseconds. */
const EVERY = 15 * 60_000;

/** Makes a back-up by itself on each day on which the shop is open, at its beginning, until it is closed. */
export function withDailyBackUps(session: DeskSession): DeskSession {
  const makeToday = (): void => {
    backUpDaily(session.context).catch((error: unknown) => {
      process.stderr.write(`There is no back-up of today: ${String(error)}\n`);
    });
  };
  const timer = setInterval(makeToday, EVERY);
  timer.unref();
  makeToday();
  return {
    ...session,
    close() {
      clearInterval(timer);
      return session.close();
    },
  };
}
