import { once } from 'node:events';
import { createRequire } from 'node:module';
import { Worker } from 'node:worker_threads';
import { z } from 'zod';

const require = createRequire(import.meta.url);

/**
 * A thread with one database file of its own: to read a large one through takes seconds in which nobody else
 * would be served. It is text, and not a file of its own, so that the bundle for the window needs no second entry.
 */
const THREAD = `
const { parentPort, workerData } = require('node:worker_threads');
const Database = require(workerData.library);
let db;
parentPort.on('message', ({ sql, given }) => {
  try {
    if (sql === null) {
      db?.close();
      parentPort.close();
      return;
    }
    db ??= new Database(workerData.file, { fileMustExist: true });
    parentPort.postMessage({ rows: db.prepare(sql).all(...given) });
  } catch (error) {
    parentPort.postMessage({ failed: String(error.message) });
  }
});
`;

const Answer = z.union([
  z.object({ rows: z.array(z.unknown()) }),
  z.object({ failed: z.string() }),
]);

export interface FileThread {
  /** @throws Error with SQLite's own words when the file can't be read so */
  ask: (sql: string, ...given: (string | number)[]) => Promise<unknown[]>;
  close: () => Promise<void>;
}

/** Opens a file that nobody else has open. One question at a time. */
export function openInThread(file: string): FileThread {
  const library = require.resolve('better-sqlite3');
  const thread = new Worker(THREAD, { eval: true, workerData: { library, file } });
  const ended = new Promise((resolve) => thread.once('exit', resolve));
  return {
    async ask(sql, ...given) {
      thread.postMessage({ sql, given });
      const [message] = await once(thread, 'message');
      const answer = Answer.parse(message);
      if ('failed' in answer) throw new Error(answer.failed);
      return answer.rows;
    },
    async close() {
      thread.postMessage({ sql: null, given: [] });
      await ended;
    },
  };
}
